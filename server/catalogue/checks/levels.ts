import { SCALES, type ScaleId } from '../../reasoning/index.js';
import type { Placed } from '../reader.js';
import type { Checking, Known } from './known.js';

/** All scales are there, in full; what bands, rules and streams require are levels of theirs. */
export function checkLevels(checking: Checking): void {
  const { tables, say, expect } = checking;
  const { scales, rules, bands, streams } = tables;
  for (const id of SCALES) {
    if (scales.ids?.has(id) === false) {
      say(scales.file, scales.path, undefined, 'a row for this scale', `precautions.scales.${id}`);
    }
  }
  for (const { file, path, row } of scales.rows) {
    const seen = new Set<string>();
    row.levels.forEach(({ id }, place) => {
      if (seen.has(id))
        say(file, [...path, 'levels', place, 'id'], id, 'each level of a scale once');
      seen.add(id);
    });
  }
  for (const at of streams.rows) expect(at, ['level'], at.row.level, levelsOf(checking, 'rags'));
  for (const at of rules.rows) expectLevels(checking, at, at.row.require);
  for (const at of bands.rows) expectLevels(checking, at, at.row.require);
}

function expectLevels(
  checking: Checking,
  at: Placed<unknown>,
  require: Readonly<Partial<Record<ScaleId, string>>>,
): void {
  for (const scale of SCALES) {
    const level = require[scale];
    if (level === undefined) continue;
    checking.expect(at, ['require', scale], level, levelsOf(checking, scale));
  }
}

function levelsOf({ tables }: Checking, scale: ScaleId): Known {
  const found = tables.scales.rows.find(({ row }) => row.id === scale);
  return {
    what: `a level of the scale ${scale}`,
    ids: found && new Set(found.row.levels.map(({ id }) => id)),
  };
}
