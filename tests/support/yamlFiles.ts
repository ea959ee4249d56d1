import { readFileSync, readdirSync } from 'node:fs';
import { parse } from 'yaml';
import type { z } from 'zod';

/** Every YAML file of a folder, by name, read and checked against its schema. */
export function yamlFiles<Content>(
  folder: URL,
  schema: z.ZodType<Content>,
): readonly { readonly name: string; readonly content: Content }[] {
  const names = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  return names.toSorted().map((name) => {
    const read = schema.safeParse(parse(readFileSync(new URL(name, folder), 'utf8')));
    if (!read.success) throw new Error(`${name}: ${read.error.message}`);
    return { name, content: read.data };
  });
}
