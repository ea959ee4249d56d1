import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput, NeverTogether, Sheet } from '../../../server/reasoning/index.js';
import { aBench, runs } from '../../support/arbitraries.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

type Add = (bench: BenchInput) => BenchInput;

/** Every way in which a thing comes on the bench, with the tags it brings. */
interface Carrier {
  readonly name: string;
  readonly tags: readonly string[];
  readonly add: Add;
}

const carrier = (
  kind: string,
  row: { readonly id: string; readonly marks: readonly string[] },
  how: string,
  add: Add,
): Carrier => ({
  name: `${kind}.${row.id}${how}`,
  tags: [`${kind}.${row.id}`, ...row.marks.map((mark) => `mark.${mark}`)],
  add,
});

const use =
  (id: string): Add =>
  (bench) => ({ ...bench, uses: [...(bench.uses ?? []), { agent: id, ml: 5 }] });

const atHand =
  (id: string): Add =>
  (bench) => ({
    ...bench,
    agentsAtHand: [...(bench.agentsAtHand ?? []), id],
  });

const CARRIERS: readonly Carrier[] = [
  ...catalogue.inks.map((row) =>
    carrier('ink', row, '', (bench) => ({
      ...bench,
      mixes: [...bench.mixes, { parts: [{ ink: row.id }] }],
    })),
  ),
  ...catalogue.additives.map((row) =>
    carrier('additive', row, '', (bench) => ({
      ...bench,
      mixes: [
        ...bench.mixes,
        { parts: [{ ink: 'oil-relief' }], additives: [{ additive: row.id }] },
      ],
    })),
  ),
  ...catalogue.surfaces.map((row) =>
    carrier('surface', row, '', (bench) => ({ ...bench, surfaces: [...bench.surfaces, row.id] })),
  ),
  ...catalogue.equipment.map((row) =>
    carrier('equipment', row, '', (bench) => ({
      ...bench,
      equipment: [...(bench.equipment ?? []), row.id],
    })),
  ),
  ...catalogue.agents.flatMap((row) => [
    carrier('agent', row, ' in use', use(row.id)),
    carrier('agent', row, ' at hand', atHand(row.id)),
  ]),
  ...catalogue.others.flatMap((row) => [
    carrier('other', row, ' in use', use(row.id)),
    carrier('other', row, ' at hand', atHand(row.id)),
  ]),
];

const bearing = (tags: readonly string[]): readonly Carrier[] =>
  CARRIERS.filter((each) => each.tags.some((tag) => tags.includes(tag)));

const stops = (sheet: Sheet, row: NeverTogether): boolean =>
  sheet.neverTogether.some((each) => each.id === row.id) && words.never(row.id) === row.words;

const nothing: BenchInput = { mixes: [], surfaces: [] };

describe('never together', { timeout: 30_000 }, () => {
  it.each(catalogue.neverTogether)('has something on each side of $id', (row) => {
    expect(bearing(row.one).length).toBeGreaterThan(0);
    expect(bearing(row.other).length).toBeGreaterThan(0);
  });

  it.each(catalogue.neverTogether)('stops for $id, however the two come on the bench', (row) => {
    const missed = bearing(row.one).flatMap((one) =>
      bearing(row.other)
        .filter((other) => !stops(reasoner.sheet(other.add(one.add(nothing))), row))
        .map((other) => `${one.name} with ${other.name}`),
    );
    expect(missed).toEqual([]);
  });

  it('does not stop for one of a pair without the other', () => {
    for (const row of catalogue.neverTogether) {
      const alone = bearing(row.one).filter(
        (each) => !each.tags.some((tag) => row.other.includes(tag)),
      );
      for (const { name, add } of alone) {
        const bench = add(nothing);
        if (bench.mixes.length > 0) continue;
        expect(stops(reasoner.sheet(bench), row), name).toBe(false);
      }
    }
  });

  it('stops for every pair that comes together on any bench', () => {
    fc.assert(
      fc.property(aBench, fc.subarray([...CARRIERS], { maxLength: 4 }), (bench, more) => {
        const sheet = reasoner.sheet(more.reduce((so, each) => each.add(so), bench));
        const tags = new Set(more.flatMap((each) => each.tags));
        for (const row of catalogue.neverTogether) {
          const meet = [row.one, row.other].every((side) => side.some((tag) => tags.has(tag)));
          if (meet) expect(stops(sheet, row), row.id).toBe(true);
        }
      }),
      runs(800),
    );
  });
});
