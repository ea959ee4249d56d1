import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';
import { loadCatalogue, type CatalogueError, type Problem } from '../../server/catalogue/index.js';

const SMALL_RULES = fileURLToPath(new URL('./smallRules/', import.meta.url));

/**
 * A folder of tables of its own for one test: the small, whole set in smallRules/ with some
 * files rewritten (`undefined`: taken away). The folder goes when the test ends.
 */
export function aRulesFolder(
  edits: Readonly<Record<string, (text: string) => string | undefined>> = {},
): string {
  const dir = mkdtempSync(join(tmpdir(), 'rules-'));
  onTestFinished(() => {
    rmSync(dir, { recursive: true });
  });
  cpSync(SMALL_RULES, dir, { recursive: true });
  for (const [name, edit] of Object.entries(edits)) {
    const path = join(dir, name);
    const text = edit(readFileSync(path, 'utf8'));
    if (text === undefined) rmSync(path);
    else writeFileSync(path, text);
  }
  return dir;
}

/** What the loader finds wrong in a folder of tables; fails when it takes them as they are. */
export function problemsOf(dir: string): readonly Problem[] {
  try {
    loadCatalogue(dir);
  } catch (error) {
    return (error as CatalogueError).problems;
  }
  throw new Error('these tables were taken as they are');
}
