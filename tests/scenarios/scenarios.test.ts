import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { BenchInput } from '../../server/reasoning/index.js';
import { reasoner } from '../support/rules.js';
import { Given, Then, looksOf } from '../support/sheetCase.js';
import { yamlFiles } from '../support/yamlFiles.js';

/**
 * Worked benches: one file each, written for a printmaker. Every `then` becomes a test of its own.
 */
const Scenario = z.strictObject({
  name: z.string(),
  story: z.string(),
  /** What the expectations rest on, and how each of it is known. */
  source: z.string(),
  given: Given,
  then: Then,
  /** The same bench with something changed. */
  but: z.array(z.strictObject({ when: z.string(), given: Given, then: Then })).optional(),
  /** Where the sheet asks for more than a printer might, and why it stays so. */
  stricter: z.array(z.string()).optional(),
});

const scenarios = yamlFiles(new URL('./', import.meta.url), Scenario);

it('are all here', () => {
  expect(scenarios).toHaveLength(8);
});

for (const { content } of scenarios) {
  describe(content.name, () => {
    testSheet(content);
    for (const changed of content.but ?? []) {
      describe(`but ${changed.when}`, () => {
        testSheet(changed);
      });
    }
  });
}

function testSheet({ given, then }: { readonly given: BenchInput; readonly then: Then }): void {
  const sheet = reasoner.sheet(given);
  for (const look of looksOf(then)) {
    it(look.name, () => {
      look.at(sheet);
    });
  }
}
