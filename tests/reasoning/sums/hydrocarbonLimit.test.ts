import { expect, test } from 'vitest';
import { hydrocarbonLimit, roundLimit } from '../../../server/reasoning/index.js';
import { catalogue } from '../../support/rules.js';

const rules = catalogue.hydrocarbons;

test('groups of two columns are refused, as their values differ fivefold', () => {
  const mixed = [
    { share: 0.8, group: 'uk-alkanes-c7-up' },
    { share: 0.2, group: 'us-aromatics-c9-c15' },
  ];
  expect(hydrocarbonLimit(rules, mixed)).toBeUndefined();
});

test('the column decides: a fifth of aromatics counts far more in the US than in the UK', () => {
  const uk = hydrocarbonLimit(rules, [
    { share: 0.8, group: 'uk-alkanes-c7-up' },
    { share: 0.2, group: 'uk-aromatics' },
  ]);
  const us = hydrocarbonLimit(rules, [
    { share: 0.8, group: 'us-alkanes-c9-c15' },
    { share: 0.2, group: 'us-aromatics-c9-c15' },
  ]);
  expect(uk).toMatchObject({ column: 'uk', roundedMgM3: undefined });
  expect(us).toMatchObject({ column: 'us', roundedMgM3: 350 });
  expect(us?.rawMgM3).toBeLessThan((uk?.rawMgM3 ?? 0) / 2);
});

test('parts with limits of their own need no column, and are not rounded', () => {
  expect(hydrocarbonLimit(rules, [{ share: 1, limitMgM3: 72 }])).toEqual({
    column: undefined,
    rawMgM3: 72,
    roundedMgM3: undefined,
  });
});

test('nothing in it, a group that no table knows or a limit of nothing has no answer', () => {
  expect(hydrocarbonLimit(rules, [])).toBeUndefined();
  expect(hydrocarbonLimit(rules, [{ share: 1, group: 'pixie-dust' }])).toBeUndefined();
  expect(hydrocarbonLimit(rules, [{ share: 1, limitMgM3: 0 }])).toBeUndefined();
});

test('a limit is rounded by the step it lies in, a half down, never to nothing', () => {
  const steps = [
    { from: 0, to: 25 },
    { from: 100, to: 50 },
    { from: 600, to: 200 },
  ];
  expect(
    [60, 99, 120, 375, 374.99999999999, 531, 690, 712].map((limit) => roundLimit(limit, steps)),
  ).toEqual([50, 100, 100, 350, 350, 550, 600, 800]);
  expect(roundLimit(8, steps)).toBe(8);
  expect(roundLimit(8, [])).toBe(8);
});
