import type { Catalogue, Range, Region, SheetLine, Value } from '../reasoning/index.js';
import { airingText, flowText, mostText } from './airing.js';
import { amountText, rangeText } from './amounts.js';
import { fill, makeTemplate, type Place } from './fill.js';
import { inside, joined, opening, sentence } from './joined.js';
import { longDate } from './longDate.js';
import type { Messages } from './messages.js';
import { NAME_KINDS, type NameKind, type Names } from './names.js';
import type { PassWords } from './passes.js';
import { regionText } from './regions.js';

/** A line as people read it: first words, enough alone, then the rest. */
export interface LineWords {
  readonly head: string;
  readonly rest: string;
}

/** What lines are filled from. */
interface Filling {
  readonly names: Names;
  readonly passWords: PassWords;
  readonly anyLevel: (levelId: string) => string | undefined;
  readonly regionOf: (regionId: string) => Region;
  readonly messages: Messages;
}

/** What a placeholder's ids name: {surface} and {surfaces} both name surfaces. */
const KIND_OF: ReadonlyMap<string, NameKind> = new Map(
  NAME_KINDS.flatMap((kind) => [[kind, kind] as const, [`${kind}s`, kind] as const]),
);

/** Placeholders that hold a level of a scale. */
const LEVEL_KEYS: ReadonlySet<string> = new Set(['level', 'have']);

/** What stands between the things of a list that is no mere row: agents come in working order. */
const BETWEEN: ReadonlyMap<string, string> = new Map([['agents', ', then ']]);

/** What of a line its words are made of. */
export type LineToSay = Pick<SheetLine, 'text' | 'values' | 'route'>;

/** Puts lines of a sheet into words; the text of each line is cut up once, at the start. */
export function makeLines(
  catalogue: Catalogue,
  filling: Filling,
): (line: LineToSay, regionId: string) => LineWords {
  const texts = new Map(
    catalogue.lines.map((text) => [
      text.id,
      { head: makeTemplate(text.head), rest: makeTemplate(text.rest) },
    ]),
  );
  return (line, regionId) => {
    const text = texts.get(line.text);
    if (!text) return { head: line.text, rest: '' };
    const region = filling.regionOf(regionId);
    const value = ({ key, opens, stands }: Place): string => {
      const words = placeholderText(key, line, region, filling);
      if (stands && words !== '') return sentence(words);
      return opens ? opening(words) : words;
    };
    return { head: fill(text.head, value), rest: fill(text.rest, value).trim() };
  };
}

/** What the line says for a placeholder; else its route; else the region; else the bare key. */
function placeholderText(key: string, line: LineToSay, region: Region, filling: Filling): string {
  const given = line.values[key];
  if (given !== undefined) return valueText(key, given, region, filling);
  if (key === 'passes' && line.route) return filling.passWords.passes(line.route);
  if (key === 'how') return howWords(line, filling.passWords);
  const words = regionText(region, key) ?? key;
  return ISO_DATE.test(words) ? longDate(words) : words;
}

const ISO_DATE = /^\d{4}-\d{2}-\d{2}$/;

/** How the agent of a line is put on; `dried` holds something when some of the ink has dried. */
function howWords({ values }: LineToSay, passWords: PassWords): string {
  const { agent, dried } = values;
  return passWords.how(
    typeof agent === 'string' ? agent : '',
    Array.isArray(dried) && dried.length > 0,
  );
}

function valueText(key: string, value: Value, region: Region, filling: Filling): string {
  if (typeof value === 'string') return nameText(key, value, filling);
  if (typeof value === 'number') return numberWords(key, value, region, filling);
  if (isRange(value)) return rangeWords(key, value, region);
  const named = value.map((id) => nameText(key, id, filling));
  const between = BETWEEN.get(key);
  return between === undefined ? joined(named) : named.join(between);
}

const isRange = (value: Range | readonly string[]): value is Range => 'low' in value;

/** A number by what it counts; the air model's are rounded against the reader. */
function numberWords(key: string, value: number, region: Region, { messages }: Filling): string {
  switch (key) {
    case 'airing':
      return airingText(value, messages);
    case 'most':
      return mostText(value, region.units);
    case 'flow':
      return flowText(value, region.units, messages);
    default:
      return rangeWords(key, { low: value, high: value }, region);
  }
}

const rangeWords = (key: string, range: Range, region: Region): string =>
  key === 'ml' || key === 'rags' ? amountText(range, key, region.units) : rangeText(range);

/** The label of an id, as it stands inside a sentence; typed words stay as they were typed. */
function nameText(key: string, id: string, { names, anyLevel }: Filling): string {
  if (key === 'date') return longDate(id);
  const level = LEVEL_KEYS.has(key) ? anyLevel(id) : undefined;
  if (level !== undefined) return level;
  const kind = KIND_OF.get(key);
  const label = kind && names.isKnown(kind, id) ? names.short(kind, id) : names.any(id);
  return label === undefined ? id : inside(label);
}
