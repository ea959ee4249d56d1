import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { catalogue, reasoner } from '../support/rules.js';
import { Given, Then, looksOf } from '../support/sheetCase.js';
import { yamlFiles } from '../support/yamlFiles.js';
import { checks } from './checks.js';

/**
 * Checks against the world outside: what published sources and the trade say, and what the project
 * answers. One file a topic; every case names its sources and how each is known.
 */
const cited = {
  name: z.string(),
  /** Ids of rules/sources.yaml, or of `sources` in the same file. */
  source: z.array(z.string()).min(1),
  how: z.enum(['read', 'from memory', 'common practice']),
  note: z.string().optional(),
};

const SheetCase = z.strictObject({ ...cited, given: Given, then: Then });
const PlainCase = z.strictObject({
  ...cited,
  check: z.enum(Object.keys(checks) as [keyof typeof checks]),
  given: z.record(z.string(), z.unknown()),
  /** `{ atLeast }`, `{ atMost }`, `{ about, within }`, `{ about, withinShare }`, `{ matching }`, `{ including }` or the answer itself. */
  expect: z.unknown(),
});

const Topic = z.strictObject({
  topic: z.string(),
  sources: z
    .record(
      z.string(),
      z.strictObject({
        title: z.string(),
        publisher: z.string().optional(),
        year: z.string().optional(),
        where: z.string().optional(),
        how: z.enum(['read', 'from memory']),
      }),
    )
    .optional(),
  cases: z.array(z.union([PlainCase, SheetCase])).min(1),
});

const topics = yamlFiles(new URL('./', import.meta.url), Topic);

for (const { name: file, content } of topics) {
  describe(content.topic, () => {
    it('is named after sources that are known, each case once', () => {
      const known = new Map([
        ...catalogue.sources.map((source) => [source.id, source.how] as const),
        ...Object.entries(content.sources ?? {}).map(([id, { how }]) => [id, how] as const),
      ]);
      for (const { name, source, how } of content.cases) {
        const hows = source.map((id) => known.get(id));
        expect(hows, `${file}: ${name}`).not.toContain(undefined);
        if (how === 'read') expect(hows, `${file}: ${name}`).toContain('read');
      }
      const names = content.cases.map((each) => each.name);
      expect(names).toEqual([...new Set(names)]);
    });

    for (const each of content.cases) {
      if ('check' in each) testPlain(each);
      else testSheet(each);
    }
  });
}

function testPlain(each: z.infer<typeof PlainCase>): void {
  it(each.name, () => {
    const { given, answer } = checks[each.check] as (typeof checks)['substance'];
    const found: unknown = answer(given.parse(each.given));
    expect({ found }).toMatchObject({ found: wanted(each.expect) });
  });
}

function testSheet(each: z.infer<typeof SheetCase>): void {
  describe(each.name, () => {
    const sheet = reasoner.sheet(each.given);
    for (const look of looksOf(each.then)) {
      it(look.name, () => {
        look.at(sheet);
      });
    }
  });
}

/** An expectation as YAML has it, with its matchers made live. */
function wanted(said: unknown): unknown {
  if (Array.isArray(said)) return said.map(wanted);
  if (typeof said !== 'object' || said === null) return said;
  const matcher = Matcher.safeParse(said);
  if (matcher.success) return matching(matcher.data);
  return Object.fromEntries(Object.entries(said).map(([key, value]) => [key, wanted(value)]));
}

const Matcher = z.union([
  z.strictObject({ atLeast: z.number() }),
  z.strictObject({ atMost: z.number() }),
  z.strictObject({ about: z.number(), within: z.number() }),
  z.strictObject({ about: z.number(), withinShare: z.number() }),
  z.strictObject({ matching: z.string() }),
  z.strictObject({ including: z.array(z.unknown()) }),
]);

function matching(matcher: z.infer<typeof Matcher>): unknown {
  if ('matching' in matcher) return expect.stringMatching(new RegExp(matcher.matching, 'i'));
  if ('including' in matcher) return expect.arrayContaining(matcher.including.map(wanted));
  if ('about' in matcher) {
    const { about } = matcher;
    const within = 'within' in matcher ? matcher.within : matcher.withinShare * Math.abs(about);
    return aNumber(`${about} within ${within}`, (found) => Math.abs(found - about) <= within);
  }
  if ('atLeast' in matcher)
    return aNumber(`at least ${matcher.atLeast}`, (found) => found >= matcher.atLeast);
  return aNumber(`at most ${matcher.atMost}`, (found) => found <= matcher.atMost);
}

const aNumber = (says: string, holds: (found: number) => boolean) => ({
  asymmetricMatch: (found: unknown) => typeof found === 'number' && holds(found),
  toString: () => says,
});
