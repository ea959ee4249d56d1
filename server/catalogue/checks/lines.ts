import { SPOKEN_TEXTS } from '../../reasoning/index.js';
import type { Placed } from '../reader.js';
import type { Path } from '../tableFile.js';
import { known, type Checking, type Known } from './known.js';

/** Every line that a level, stream or rule prints is there; every {placeholder} is one we can fill. */
export function checkLines({ tables, say, expect, expectAll }: Checking): void {
  const line: Known = known('a line id', tables.lines);
  const [first] = tables.lines.rows;
  const spoken = SPOKEN_TEXTS.filter((id) => tables.lines.ids?.has(id) === false);
  if (first !== undefined) {
    for (const id of spoken) {
      say(first.file, [], 'no such line', `a line ${id}, which the program speaks by itself`);
    }
  }
  for (const at of tables.scales.rows) {
    at.row.levels.forEach((level, place) => {
      expect(at, ['levels', place, 'line'], level.line, line);
    });
  }
  for (const at of tables.streams.rows) expect(at, ['line'], at.row.line, line);
  for (const at of tables.rules.rows) expectAll(at, ['lines'], at.row.lines, line);

  const checkText = (at: Placed<unknown>, path: Path, text: string, names: readonly string[]) => {
    for (const [found] of text.matchAll(/\{[^{}]*\}?|\}/g)) {
      if (names.includes(found.slice(1, -1))) continue;
      say(at.file, [...at.path, ...path], found, names.map((name) => `{${name}}`).join(' '));
    }
  };
  for (const at of tables.lines.rows) {
    checkText(at, ['head'], at.row.head, IN_LINES);
    checkText(at, ['rest'], at.row.rest, IN_LINES);
  }
  for (const at of tables.firstAid.rows) {
    const { steps, never = [] } = at.row;
    steps.forEach((text, place) => {
      checkText(at, ['steps', place], text, OF_REGION);
    });
    never.forEach((text, place) => {
      checkText(at, ['never', place], text, OF_REGION);
    });
  }
}

/** What the region's row fills in, anywhere. */
const OF_REGION = [
  ...['region', 'emergency', 'poison', 'minutes', 'date', 'authority', 'authorities'],
  ...['solventFire', 'ragFire', 'days', 'label'],
];

/** What the values of a sheet line fill in, beside those. */
const IN_LINES = [
  ...OF_REGION,
  ...['what', 'section', 'percent', 'usual', 'highest', 'have', 'level', 'materials'],
  ...[
    'surface',
    'surfaces',
    'inks',
    'passes',
    'agent',
    'agents',
    'how',
    'ml',
    'items',
    'rags',
    'codes',
    'airing',
    'flow',
    'most',
  ],
];
