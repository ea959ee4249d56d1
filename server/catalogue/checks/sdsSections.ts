import type { Checking } from './known.js';

/** Each section of the data sheet stands once, each thing in one of them, and unknowns lead to one. */
export function checkSdsSections({ tables, say }: Checking): void {
  const { sdsSections, sdsFigures } = tables;
  const sections = new Set<number>();
  const things = new Set<string>();
  for (const { file, path, row } of sdsSections.rows) {
    if (sections.has(row.section)) {
      say(file, [...path, 'section'], row.section, 'a section that no other row has');
    }
    sections.add(row.section);
    row.holds.forEach((thing, place) => {
      if (things.has(thing)) say(file, [...path, 'holds', place], thing, 'each thing once');
      things.add(thing);
    });
  }
  for (const [kind, section] of Object.entries(sdsFigures?.row.settledBy ?? {})) {
    if (sections.has(section)) continue;
    const path = ['settledBy', kind];
    say(sdsSections.file, path, section, `a section that has a row (${[...sections].join(', ')})`);
  }
}
