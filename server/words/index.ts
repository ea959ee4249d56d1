import type { Catalogue, Range, Region, ScaleId, SheetLine } from '../reasoning/index.js';
import { makeAirWords, type AirWords } from './air.js';
import { makeAirFigures, type AirFigureWords } from './airFigures.js';
import { airingText } from './airing.js';
import { amountText, type AmountKind } from './amounts.js';
import { makeLines, type LineWords } from './lines.js';
import type { Messages } from './messages.js';
import { makeNames, type NameKind } from './names.js';
import { makePasses, type PassWords } from './passes.js';
import { makeRegions, type RegionWords } from './regions.js';
import { rowTexts, type RowText } from './rows.js';
import { makeSayings, type Sayings } from './sayings.js';

export { airingClock } from './airing.js';
export { inside, joined, opening } from './joined.js';
export { longDate } from './longDate.js';
export { makeMessages, type Messages } from './messages.js';
export type { FirstAidWords } from './regions.js';
export type { RowText } from './rows.js';

/** Everything of a sheet that people read, from the tables. Ids in, words out. */
export interface Words extends AirFigureWords, AirWords, PassWords, RegionWords, Sayings {
  /** The label of a row; what was typed when no table knows it. */
  readonly name: (kind: NameKind, id: string) => string;
  readonly short: (kind: NameKind, id: string) => string;
  readonly line: (line: SheetLine, regionId: string) => LineWords;
  /** Words of the interface, by key. */
  readonly message: Messages;
  readonly level: (scale: ScaleId, levelId: string) => string;
  /** An airing time in minutes, rounded up. */
  readonly airing: (minutes: number) => string;
  readonly amount: (range: Range, kind: AmountKind, regionId: string) => string;
  /** What a rag stream is called, what it goes into and when that is emptied. */
  readonly stream: (streamId: string) => StreamWords;
  /** What must stop when these are on one bench. */
  readonly never: (neverTogetherId: string) => string;
  /** The row that an id of `because` stands for. */
  readonly row: (rowId: string) => RowText | undefined;
  readonly rows: () => readonly RowText[];
}

interface StreamWords {
  readonly name: string;
  readonly container: string;
  readonly emptied: string;
}

/** Puts results of the reasoning into the words of the tables; what no table says, messages say. */
export function makeWords(catalogue: Catalogue, messages: Messages): Words {
  const names = makeNames(catalogue);
  const regionOf = makeRegionOf(catalogue);
  const levels = new Map(
    catalogue.scales.flatMap((scale) =>
      scale.levels.map((level) => [`${scale.id}.${level.id}`, level.name] as const),
    ),
  );
  const level = (scale: ScaleId, levelId: string): string =>
    levels.get(`${scale}.${levelId}`) ?? levelId;
  const levelNames = new Map(
    catalogue.scales.flatMap((scale) => scale.levels.map((one) => [one.id, one.name] as const)),
  );
  const anyLevel = (levelId: string): string | undefined => levelNames.get(levelId);
  const passWords = makePasses(catalogue);
  const streams = new Map(catalogue.streams.map((row) => [row.id, row]));
  const stops = new Map(catalogue.neverTogether.map((row) => [row.id, row.words]));
  const texts = rowTexts(catalogue, names, messages);
  const list = [...texts.values()];
  const line = makeLines(catalogue, { names, passWords, anyLevel, regionOf, messages });
  return {
    name: names.name,
    short: names.short,
    line,
    message: messages,
    level,
    ...passWords,
    ...makeRegions(catalogue, regionOf),
    ...makeAirWords(catalogue, names, anyLevel),
    ...makeAirFigures(messages, regionOf),
    ...makeSayings({ names, level, messages, fillLine: (text) => line(text, ELSEWHERE) }),
    airing: (minutes) => airingText(minutes, messages),
    amount: (range, kind, regionId) => amountText(range, kind, regionOf(regionId).units),
    stream: (streamId) => {
      const { name = streamId, container = '', emptied = '' } = streams.get(streamId) ?? {};
      return { name, container, emptied };
    },
    never: (id) => stops.get(id) ?? id,
    row: (rowId) => texts.get(rowId),
    rows: () => list,
  };
}

/** The row for everywhere that has no row of its own. */
const ELSEWHERE = 'other';

/** The region of an id; when no table has it, the row for everywhere else. */
function makeRegionOf(catalogue: Catalogue): (regionId: string) => Region {
  const regions = new Map(catalogue.regions.map((region) => [region.id, region]));
  const elsewhere = catalogue.regions.find((region) => region.id === ELSEWHERE);
  return (regionId) => {
    const region = regions.get(regionId) ?? elsewhere;
    if (!region) throw new Error(`no region ${regionId}, and none for everywhere else`);
    return region;
  };
}
