import type { Sheet } from '../../server/reasoning/index.js';
import { words } from './rules.js';

/** Everything that people read of a sheet, one saying an entry. */
export const spokenOf = (sheet: Sheet): readonly string[] => {
  const { region } = sheet.bench;
  return [
    ...sheet.lines.flatMap((line) => {
      const { head, rest } = words.line(line, region);
      return [head, rest];
    }),
    ...sheet.levels.map((reached) => words.level(reached.scale, reached.level)),
    ...sheet.plan.agents.map((agent) => words.short('agent', agent)),
    ...sheet.plan.routes.map((route) => (route.stuck === undefined ? words.passes(route) : '')),
    ...sheet.gloves.materials.map((material) => words.name('material', material.id)),
    ...sheet.streams.flatMap((stream) => {
      const { name, container, emptied } = words.stream(stream.id);
      return [name, container, emptied];
    }),
    ...sheet.neverTogether.map((row) => words.never(row.id)),
    ...sheet.unknown.map((unknown) => words.unknown(unknown)),
    ...sheet.flags.map((flag) => words.flag(flag)),
    ...sheet.swaps.map((swap) => words.swap(swap)),
    ...words.defer(region),
    ...words.firstAid(region).flatMap(({ name, steps, never }) => [name, ...steps, ...never]),
  ].filter((saying) => saying !== '');
};

/** Every id that the sheet gives as a reason. */
export const reasonsOf = (sheet: Sheet): readonly string[] => [
  ...new Set([
    ...sheet.levels.flatMap((reached) => [...reached.because, ...reached.folded]),
    ...sheet.lines.flatMap((line) => [...line.because, ...line.folded]),
    ...sheet.plan.routes.flatMap((route) => route.because),
    ...sheet.streams.flatMap((stream) => stream.because),
    ...sheet.neverTogether.flatMap((row) => row.because),
    ...sheet.gloves.because,
  ]),
];
