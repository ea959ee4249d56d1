import { AIR_CAUTIONS, AIR_FIGURES, type AirSituation } from '../../reasoning/index.js';
import type { Checking } from './known.js';

/**
 * Every level of the air scale but the last, which is out of the room, says what air it gives; a
 * stricter level gives no less; and no figure of the model is missing.
 */
export function checkAiring({ tables, say }: Checking): void {
  const { scales, airSituations, airFigures, airCautions } = tables;
  const { file, path, rows, ids } = airSituations;
  // Rows that are wrong themselves are told where they stand.
  const found = ids && [...ids];
  const levels = scales.rows.find(({ row }) => row.id === 'air')?.row.levels.map(({ id }) => id);
  const wanted =
    levels !== undefined && new Set(levels).size === levels.length && levels.slice(0, -1);
  if (wanted && found && wanted.join() !== found.join()) {
    say(
      file,
      path,
      found,
      `the levels of the air scale but the last, in order: ${wanted.join(', ')}`,
    );
  }
  rows.forEach((at, place) => {
    const milder = rows[place - 1];
    if (milder === undefined || airOf(at.row) >= airOf(milder.row)) return;
    say(at.file, at.path, at.row.id, `at least as much air as ${milder.row.id}, which is milder`);
  });
  for (const id of AIR_FIGURES) {
    if (airFigures.ids?.has(id) !== false) continue;
    say(
      airFigures.file,
      airFigures.path,
      undefined,
      'a row for this figure',
      `airing.figures.${id}`,
    );
  }
  for (const id of AIR_CAUTIONS) {
    if (airCautions.ids?.has(id) !== false) continue;
    say(
      airCautions.file,
      airCautions.path,
      undefined,
      'a row for this caution',
      `airing.cautions.${id}`,
    );
  }
}

/** Air as it counts: changes over mixing, with no more vapour than is not caught. */
const airOf = ({ airChangesPerHour, mixingFactor, captured }: AirSituation): number =>
  airChangesPerHour.counted / mixingFactor.counted / (1 - captured.counted);
