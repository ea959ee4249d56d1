import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BenchInput, SCALES, type Sheet } from '../../../server/reasoning/index.js';
import { aBench, regionIds, runs } from '../../support/arbitraries.js';
import { EVERY_SURFACE, SURFACE_SETS, THINGS, mixOf, pairsOf } from '../../support/everyMix.js';
import { spokenOf } from '../../support/spokenOf.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

const DOORS = ['aid-eye', 'aid-skin', 'aid-swallowed', 'aid-breathed', 'aid-spill', 'aid-fire'];
const ALWAYS = ['defer', ...DOORS];
/** Lines that say why no agent is named, or none for one thing. */
const SAYS_NONE = /^(no-mixes|no-surfaces|no-agent|tool-stuck-.*)$/;

const texts = new Map(catalogue.lines.map((line) => [line.id, line]));

/** Placeholders of a text that stand in the words as their own bare names. */
const bareIn = (template: string, rendered: string): readonly string[] => {
  const keys = [...template.matchAll(/\{(\w+)\}/g)].map(([, key = '']) => key);
  const literals = template.split(/\{\w+\}/).map((piece) => piece.replace(/[^\w ]/g, '\\$&'));
  const filled = new RegExp(`^${literals.join('(.*?)')}\\.?$`, 'i').exec(rendered.trim());
  return keys.filter((key, at) => filled?.[at + 1]?.toLowerCase() === key.toLowerCase());
};

/** What a sheet leaves out or says brokenly. */
const gapsOf = (sheet: Sheet): readonly string[] => {
  const printed = sheet.lines.map((line) => line.text);
  const levels = new Map(catalogue.scales.map((scale) => [scale.id, scale.levels]));
  return [
    ...(sheet.levels.map((reached) => reached.scale).join() === SCALES.join() ? [] : ['scales']),
    ...sheet.levels.flatMap(({ scale, level, height }) =>
      levels.get(scale)?.[height]?.id === level ? [] : [`level of ${scale}`],
    ),
    ...sheet.levels.flatMap(({ scale, height }) => {
      const says = levels.get(scale)?.[height]?.line ?? '';
      return printed.includes(says) || scale === 'gloves' ? [] : [`line of ${scale}`];
    }),
    ...(printed.some((text) => text.startsWith('gloves-')) ? [] : ['line of gloves']),
    ...(printed.some((text) => text.startsWith('aid-call')) ? [] : ['whom to call']),
    ...ALWAYS.filter((text) => !printed.includes(text)),
    ...(sheet.plan.agents.length > 0 || printed.some((text) => SAYS_NONE.test(text))
      ? []
      : ['agents, or that there are none']),
    ...sheet.lines.flatMap((line) => {
      const { head, rest } = words.line(line, sheet.bench.region);
      const text = texts.get(line.text);
      return [...bareIn(text?.head ?? '', head), ...bareIn(text?.rest ?? '', rest)].map(
        (key) => `{${key}} in ${line.id}`,
      );
    }),
    ...spokenOf(sheet).filter((saying) => /undefined|null|NaN|\[object|[{}]/.test(saying)),
  ];
};

const check = (bench: BenchInput): void => {
  expect(gapsOf(reasoner.sheet(bench)), JSON.stringify(bench)).toEqual([]);
};

describe('whole', { timeout: 30_000 }, () => {
  it('says all that a sheet must for any bench at all', () => {
    fc.assert(fc.property(aBench, check), runs(1000));
  });

  it.each(regionIds)('does so in %s with nothing on the bench, and with everything', (region) => {
    check({ region, mixes: [], surfaces: [] });
    check({ region, mixes: [mixOf(THINGS.slice(0, 1))], surfaces: [] });
    check({ region, mixes: [], surfaces: EVERY_SURFACE });
    check({
      region,
      mixes: THINGS.map((thing) => mixOf([thing])),
      surfaces: EVERY_SURFACE,
      equipment: catalogue.equipment.map((row) => row.id),
      uses: catalogue.agents.map(({ id }) => ({ agent: id, ml: 20 })),
      people: { count: 12, under16: true, flags: catalogue.people.map((row) => row.id) },
    });
  });

  it('falls back on the rules for somewhere else when no region is said', () => {
    check({ mixes: [], surfaces: [] });
    expect(reasoner.sheet({ mixes: [], surfaces: [] }).bench.region).toBe('other');
  });

  it.each([false, true])('does so for each thing on each surface, dried: %s', (dried) => {
    for (const thing of THINGS) {
      for (const surface of EVERY_SURFACE) {
        check({ region: 'us', mixes: [mixOf([thing], dried)], surfaces: [surface] });
      }
    }
  });

  it('does so for every two things in one mix', () => {
    for (const pair of pairsOf(THINGS)) {
      for (const surfaces of SURFACE_SETS.slice(1, 3)) {
        check({ region: 'uk', mixes: [mixOf(pair)], surfaces });
      }
    }
  });
});
