import { describe, expect, it } from 'vitest';
import type { BenchInput } from '../../../server/reasoning/index.js';
import { tagBench } from '../../../server/reasoning/facts/tagBench.js';
import { benchOf, book } from '../../support/everyMix.js';

const facts = (more: Partial<BenchInput>) =>
  tagBench(book, benchOf({ mixes: [], surfaces: [], ...more }));

const dosed = (additive: string, percent?: number) =>
  facts({ mixes: [{ parts: [{ ink: 'oil-relief' }], additives: [{ additive, percent }] }] });

const extended = (share: number) =>
  facts({
    mixes: [
      {
        parts: [
          { ink: 'oil-relief', share: 100 - share },
          { ink: 'transparent-base', share },
        ],
      },
    ],
  });

const kindsOf = ({ flags }: ReturnType<typeof facts>) => flags.map((flag) => flag.kind);

describe('what is on a bench', () => {
  it('is always something, and nothing else when nothing is named', () => {
    expect([...facts({}).tags]).toEqual(['always']);
  });

  it('brings the marks of each thing', () => {
    const { tags, rows } = facts({
      mixes: [{ parts: [{ ink: 'oil-relief' }, { ink: 'oil-etching' }] }],
    });
    expect(tags).toContain('ink.oil-relief');
    expect(tags).toContain('mark.plain-oil');
    expect([...rows]).toEqual(['ink.oil-etching', 'ink.oil-relief']);
  });

  it('names a thing once, though it is in two mixes', () => {
    const parts = [{ ink: 'oil-relief' }];
    const { rows, tags } = facts({ mixes: [{ parts }, { parts, dried: true }] });
    expect([...rows]).toEqual(['ink.oil-relief']);
    expect(tags).toContain('state.dried');
  });

  it('takes a dose just at the usual for usual, and any more for more', () => {
    expect(kindsOf(dosed('cobalt-drier', 2.5))).toEqual([]);
    expect(kindsOf(dosed('cobalt-drier', 2.6))).toEqual(['dose-above-usual']);
    expect(dosed('cobalt-drier', 2.5).tags).not.toContain('dose.above-usual');
    expect(dosed('cobalt-drier', 2.6).tags).toContain('dose.above-usual');
  });

  it('takes a dose just at the highest for no more than that', () => {
    expect(kindsOf(dosed('cobalt-drier', 3.5))).toEqual(['dose-above-usual']);
    expect(dosed('cobalt-drier', 3.5).tags).not.toContain('dose.above-highest');
    const over = dosed('cobalt-drier', 3.6);
    expect(kindsOf(over)).toEqual(['dose-above-highest']);
    expect([...over.tags]).toEqual(
      expect.arrayContaining(['dose.above-usual', 'dose.above-highest']),
    );
    expect(over.flags[0]?.values).toMatchObject({ percent: 3.6, highest: 3.5, mix: 'mix-1' });
  });

  it('says nothing of a dose that was not said, or that no table limits', () => {
    expect(kindsOf(dosed('cobalt-drier'))).toEqual([]);
    expect(kindsOf(dosed('antiskin-spray', 50))).toEqual([]);
    expect(kindsOf(dosed('my jar', 50))).toEqual([]);
  });

  it('counts the share of an extender as a dose', () => {
    expect(kindsOf(extended(80))).toEqual([]);
    expect(kindsOf(extended(80.1))).toEqual(['dose-above-usual']);
    expect(kindsOf(extended(95.1))).toEqual(['dose-above-highest']);
  });

  it('brings the frame and bar with a roller, also one that only a mix is on', () => {
    expect(facts({ surfaces: ['roller-nitrile'] }).surfaces).toEqual([
      'roller-nitrile',
      'steel-tools',
    ]);
    const mixes = [{ parts: [{ ink: 'oil-relief' }], on: ['roller-nitrile'] }];
    expect(facts({ mixes }).tags).toContain('surface.steel-tools');
  });

  it('names everything that no table knows, each once, with the section that settles it', () => {
    const found = facts({
      mixes: [
        { parts: [{ ink: 'x' }], additives: [{ additive: 'x' }], on: ['x'] },
        { parts: [{ ink: 'x' }], dried: true },
      ],
      equipment: ['x'],
      agentsAtHand: ['x', 'veg-oil'],
      uses: [{ agent: 'x', ml: 1 }],
      people: { flags: ['x'] },
      room: { air: 'x' },
    });
    expect(found.unknown).toEqual([
      { kind: 'ink', id: 'x', sdsSection: 2 },
      { kind: 'additive', id: 'x', sdsSection: 2 },
      { kind: 'surface', id: 'x', sdsSection: 10 },
      { kind: 'equipment', id: 'x', sdsSection: 8 },
      { kind: 'agent', id: 'x', sdsSection: 2 },
      { kind: 'person', id: 'x', sdsSection: 11 },
      { kind: 'air', id: 'x', sdsSection: 8 },
    ]);
    for (const kind of ['ink', 'additive', 'surface', 'equipment', 'agent', 'person']) {
      expect(found.tags).toContain(`unknown.${kind}`);
    }
  });

  it('does not count as used a bottle that only stands at hand', () => {
    const found = facts({ agentsAtHand: ['grey bottle', 'bleach'] });
    expect(found.tags).not.toContain('unknown.agent');
    expect(found.tags).not.toContain('state.used');
    expect(found.tags).toContain('mark.hypochlorite');
  });

  it('knows another chemical in use, and one in a bath, for what it is', () => {
    const found = facts({
      uses: [{ agent: 'bleach', ml: 5 }],
      equipment: ['nitric-acid', 'hotplate'],
    });
    expect(found.unknown).toEqual([]);
    expect([...found.tags]).toEqual(
      expect.arrayContaining(['other.bleach', 'other.nitric-acid', 'mark.acid', 'mark.heat']),
    );
  });

  it.each([
    [undefined, []],
    [1, []],
    [2, ['people.several']],
    [5, ['people.several']],
    [6, ['people.several', 'people.group']],
  ])('counts %s people', (count, tags) => {
    const found = facts({ people: { count } }).tags;
    expect([...found].filter((tag) => tag.startsWith('people.'))).toEqual(tags);
  });

  it('takes under 16 said either way', () => {
    expect(facts({ people: { under16: true } }).tags).toContain('person.under16');
    expect(facts({ people: { flags: ['under16'] } }).tags).toContain('person.under16');
  });
});
