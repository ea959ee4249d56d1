import { SCALES, type Scale } from '../../reasoning/index.js';
import type { Checking } from './known.js';

/** Bands count up by one, ask for no less than the band below, and every rank leads to one. */
export function checkBands(checking: Checking): void {
  const { tables, say } = checking;
  const bands = tables.bands.rows.toSorted((one, other) => one.row.band - other.row.band);
  bands.forEach((at, place) => {
    const below = bands[place - 1];
    if (below === undefined) return;
    if (at.row.band !== below.row.band + 1) {
      say(at.file, [...at.path, 'band'], at.row.band, `${below.row.band + 1}, the band after`);
    }
    for (const scale of SCALES) {
      if (scale === 'rags') continue;
      const steps = tables.scales.rows.find(({ row }) => row.id === scale)?.row;
      const floor = below.row.require[scale];
      if (steps === undefined || floor === undefined) continue;
      const here = at.row.require[scale];
      if (height(steps, here) < height(steps, floor)) {
        say(
          at.file,
          [...at.path, 'require', scale],
          here,
          `${floor} or stricter, as the band below asks`,
        );
      }
    }
  });
  checkRanks(checking, new Set(bands.map(({ row }) => row.band)));
}

function height(scale: Scale, level: string | undefined): number {
  return scale.levels.findIndex(({ id }) => id === level);
}

function checkRanks({ tables, say }: Checking, bands: ReadonlySet<number>): void {
  const figures = tables.bandFigures;
  if (figures === undefined) return;
  const { vapour, noLimitRank, fire, health } = figures.row;
  const ranked = [
    ...vapour.map(({ rank }, place) => [['vapour', place, 'rank'], rank] as const),
    [['noLimitRank'], noLimitRank] as const,
    ...Object.entries(fire).map(([key, rank]) => [['fire', key], rank] as const),
    ...Object.entries(health).map(([key, rank]) => [['health', key], rank] as const),
  ];
  for (const [path, rank] of ranked) {
    if (bands.has(rank)) continue;
    say(figures.file, [...figures.path, ...path], rank, `a band (${[...bands].join(', ')})`);
  }
  vapour.forEach(({ below, rank }, place) => {
    const before = vapour[place - 1];
    if (before === undefined || (before.below < below && before.rank <= rank)) return;
    say(
      figures.file,
      [...figures.path, 'vapour', place],
      { below, rank },
      'a higher figure, and no milder rank, than the row before',
    );
  });
}
