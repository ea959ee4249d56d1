import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { BenchInput } from '../../../server/reasoning/index.js';
import {
  type GloveThatHolds,
  glovesThatHold,
} from '../../../server/reasoning/gloves/glovesThatHold.js';
import { aBench, agentIds, runs } from '../../support/arbitraries.js';
import { EVERY_SURFACE, THINGS, mixOf, pairsOf } from '../../support/everyMix.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

type Thickness = 'thin' | 'thick';

interface GloveRow {
  readonly chartRows: readonly string[];
  readonly standIn?: Readonly<Record<string, string>>;
  readonly chemicals: readonly string[];
}

interface GloveTables {
  readonly chart: readonly {
    readonly id: string;
    readonly grades: Readonly<Record<string, string>>;
  }[];
  readonly breakthrough: readonly {
    readonly chemical: string;
    readonly material: string;
    readonly thickness: string;
    readonly minutesLow: number;
    readonly testedWarm: boolean;
  }[];
  readonly share: { readonly testedWarm: number; readonly testedCool: number };
  readonly mostMinutes: number;
}

const read = (name: string): unknown =>
  parse(readFileSync(new URL(`../../../rules/${name}.yaml`, import.meta.url), 'utf8'));

const tables = read('gloves') as GloveTables;
const gloveRows = new Map(
  (read('agents') as readonly { readonly id: string; readonly glove: GloveRow }[]).map((row) => [
    row.id,
    row.glove,
  ]),
);

/** What is wrong with naming a glove against these agents; nothing: ''. */
const faultOf = (
  glove: GloveThatHolds,
  agents: readonly string[],
  thickness: Thickness,
): string => {
  let least: number | undefined;
  for (const agent of agents) {
    const row = gloveRows.get(agent);
    if (row === undefined) return `${agent} has no glove row`;
    const letters =
      row.chartRows.length > 0
        ? row.chartRows.map((id) => tables.chart.find((each) => each.id === id)?.grades[glove.id])
        : [row.standIn?.[glove.id]];
    if (!letters.every((letter) => letter === 'VG' || letter === 'G')) {
      return `${glove.id} is ${letters.join()} against ${agent}`;
    }
    if (row.chemicals.length === 0) continue;
    const timed = tables.breakthrough.filter(
      (each) => each.material === glove.id && row.chemicals.includes(each.chemical),
    );
    const fitting = timed.filter((each) => ['unknown', thickness].includes(each.thickness));
    const minutes = (fitting.length > 0 ? fitting : timed).map(
      (each) => each.minutesLow * tables.share[each.testedWarm ? 'testedWarm' : 'testedCool'],
    );
    least = Math.min(least ?? tables.mostMinutes, minutes.length === 0 ? 0 : Math.min(...minutes));
  }
  // Whole minutes, and 120 out of a third of 360 in floating point.
  const said = glove.changeAfterMin;
  if (said === undefined || least === undefined) return said === least ? '' : 'has no minutes';
  return said <= least + 0.05 && said > least - 1
    ? ''
    : `${String(said)} of ${String(least)} minutes`;
};

/** Agents on the sheet: planned, or said to be in use. */
const checkSheet = (bench: BenchInput): void => {
  const sheet = reasoner.sheet(bench);
  const used = sheet.bench.uses.map((use) => use.agent).filter((id) => gloveRows.has(id));
  const agents = [...new Set([...sheet.plan.agents, ...used])];
  const { materials, changeAfterMin, thickness } = sheet.gloves;
  const faults = materials.map((glove) => faultOf(glove, agents, thickness)).filter(Boolean);
  expect(faults, JSON.stringify(bench)).toEqual([]);
  expect(materials.map((glove) => glove.id)).not.toContain('latex');
  expect(changeAfterMin).toBe(materials[0]?.changeAfterMin);

  const said = sheet.lines
    .filter((line) => line.text.startsWith('gloves-change'))
    .map((line) => words.line(line, sheet.bench.region).head);
  expect(said).toHaveLength(1);
  if (changeAfterMin === 0) expect(said[0]).toMatch(/at once/);
  if (changeAfterMin) expect(said[0]).toContain(` ${String(changeAfterMin)} minutes`);
  if (materials.length === 0) {
    const none = ['gloves-by-sds', 'gloves-none-hold'];
    expect(sheet.lines.some((line) => none.includes(line.text))).toBe(true);
  }
};

describe('gloves hold', { timeout: 30_000 }, () => {
  it('names only gloves that are good against every agent on the sheet, with their minutes', () => {
    fc.assert(fc.property(aBench, checkSheet), runs(1000));
  });

  it.each(['thin', 'thick'] as const)(
    'does so for every set of agents there is, %s',
    (thickness) => {
      const faults: string[] = [];
      for (let set = 0; set < 2 ** agentIds.length; set += 1) {
        const ids = agentIds.filter((_, at) => Math.floor(set / 2 ** at) % 2 === 1);
        const agents = catalogue.agents.filter((agent) => ids.includes(agent.id));
        for (const glove of glovesThatHold(catalogue.gloves, agents, thickness)) {
          const fault = faultOf(glove, ids, thickness);
          if (fault !== '') faults.push(`${ids.join(' + ')}: ${fault}`);
        }
      }
      expect(faults).toEqual([]);
    },
  );

  it('leaves out no glove that would hold against one agent', () => {
    for (const agent of catalogue.agents) {
      const named = glovesThatHold(catalogue.gloves, [agent], 'thick').map((glove) => glove.id);
      const good = catalogue.gloves.materials
        .filter(
          (material) =>
            material.named &&
            !faultOf({ id: material.id, grade: 'G' }, [agent.id], 'thick').includes(' against '),
        )
        .map((material) => material.id);
      expect([...named].sort(), agent.id).toEqual([...good].sort());
    }
  });

  it('does so for each thing on each surface, dried or not', () => {
    for (const thing of THINGS) {
      for (const surface of EVERY_SURFACE) {
        checkSheet({ mixes: [mixOf([thing])], surfaces: [surface] });
        checkSheet({ mixes: [mixOf([thing], true)], surfaces: [surface] });
      }
    }
  });

  it('does so for every two agents in use', () => {
    for (const pair of pairsOf(agentIds)) {
      checkSheet({ mixes: [], surfaces: [], uses: pair.map((agent) => ({ agent, ml: 10 })) });
    }
  });
});
