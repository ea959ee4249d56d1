import type {
  Breakthrough,
  Catalogue,
  GloveChartRow,
  GloveGrade,
  Grade,
  How,
  Oil,
  Row,
  Scale,
  Source,
  Substance,
} from '../reasoning/index.js';
import { numberText, rangeText } from './amounts.js';
import { inside, joined, opening, sentence } from './joined.js';
import type { Names } from './names.js';

/** Any row of any table, as people read it. */
export interface RowText {
  /** As it stands in `because` and in the address of its page. */
  readonly id: string;
  readonly table: string;
  readonly name: string;
  readonly says: string;
  readonly how: How;
  readonly note?: string;
  readonly sources: readonly Source[];
}

type Entry = readonly [id: string, name: string, says: string, row: Row];

const GRADES: Readonly<Record<Grade, string>> = {
  ok: 'May be used.',
  brief: 'Wipe on, wipe off at once.',
  harms: 'Keep apart: it does harm.',
};

const GLOVE_GRADES: Readonly<Record<GloveGrade, string>> = {
  VG: 'very good',
  G: 'good',
  F: 'fair',
  P: 'poor',
};

/** All rows of all tables in words, by the id that stands in `because`. */
export function rowTexts(catalogue: Catalogue, names: Names): ReadonlyMap<string, RowText> {
  const sources = new Map(catalogue.sources.map((source) => [source.id, source]));
  const tables: Readonly<Record<string, readonly Entry[]>> = {
    precautions: catalogue.rules.map((row) => [row.id, row.name, row.why, row]),
    inks: catalogue.inks.map((row) => [
      `ink.${row.id}`,
      row.name,
      said(row.clean, row.neverWhy),
      row,
    ]),
    additives: catalogue.additives.map((row) => [
      `additive.${row.id}`,
      row.name,
      said(row.purpose, row.clean, row.rags),
      row,
    ]),
    surfaces: catalogue.surfaces.map((row) => [
      `surface.${row.id}`,
      row.name,
      said(row.what, row.last),
      row,
    ]),
    agents: catalogue.agents.map((row) => [`agent.${row.id}`, row.name, said(row.apply), row]),
    pairs: catalogue.pairs.map((row) => [
      `pair.${row.id}`,
      `${names.short('surface', row.surface)} and ${inside(names.short('agent', row.agent))}`,
      said(GRADES[row.grade], row.why, row.studioWhy),
      row,
    ]),
    substances: catalogue.substances.map((row) => [
      `substance.${row.id}`,
      row.name,
      substanceWords(row),
      withLimitSources(row),
    ]),
    'hazard-codes': catalogue.hazardCodes.map((row) => [`code.${row.id}`, row.id, row.text, row]),
    bands: catalogue.bandRules.bands.map((row) => [
      `band.${row.id}`,
      opening(row.name),
      said(...Object.entries(row.require).map(([scale, level]) => asks(catalogue, scale, level))),
      row,
    ]),
    scales: catalogue.scales.flatMap(levelEntries),
    rags: catalogue.streams.map((row) => [
      `stream.${row.id}`,
      row.name,
      said(row.container, row.emptied),
      row,
    ]),
    equipment: catalogue.equipment.map((row) => [
      `equipment.${row.id}`,
      row.name,
      marksWords(catalogue, row.marks),
      row,
    ]),
    people: catalogue.people.map((row) => [`person.${row.id}`, row.name, row.ask, row]),
    others: catalogue.others.map((row) => [
      `other.${row.id}`,
      row.name,
      marksWords(catalogue, row.marks),
      row,
    ]),
    'never-together': catalogue.neverTogether.map((row) => [
      `never.${row.id}`,
      said(row.makes).replace(/\.$/, ''),
      row.words,
      row,
    ]),
    gloves: [
      ...catalogue.gloves.chart.map((row): Entry => [
        `glove-chart.${row.id}`,
        row.chemical,
        chartWords(row, names),
        row,
      ]),
      ...catalogue.gloves.breakthrough.map((row): Entry => [
        `breakthrough.${row.id}`,
        `${row.chemical} through ${inside(names.name('material', row.material))}`,
        breakthroughWords(row),
        row,
      ]),
    ],
    'first-aid': catalogue.firstAid.map((row) => [
      `first-aid.${row.id}`,
      row.name,
      said(...row.steps, ...(row.never ?? [])),
      row,
    ]),
    regions: catalogue.regions.map((row) => [
      `region.${row.id}`,
      row.name,
      said(
        ...[...row.emergency, ...row.poison].map((one) => `${one.name}: ${one.number}`),
        `Numbers looked up on ${row.checkedOn} in ${row.checkedIn}`,
      ),
      row,
    ]),
    oils: [
      ...catalogue.oils.oils.map((row): Entry => [`oil.${row.id}`, row.name, oilWords(row), row]),
      ...catalogue.oils.schemes.map((row): Entry => [
        `drying.${row.id}`,
        row.name,
        `Semi-drying from iodine value ${row.semiDryingFrom} to ${row.semiDryingTo}. Below, an oil does not dry; above, it dries.`,
        row,
      ]),
    ],
    'sds-sections': catalogue.sds.sections.map((row) => [
      `sds.${row.id}`,
      `Data sheet, section ${row.section}: ${row.heading}`,
      said(`Look here for: ${joined(row.holds)}`),
      row,
    ]),
    marks: catalogue.marks.map((row) => [`mark.${row.id}`, row.id, row.means, row]),
  };
  return new Map(
    Object.entries(tables).flatMap(([table, entries]) =>
      entries.map(([id, name, says, row]) => [
        id,
        {
          id,
          table,
          name,
          says,
          how: row.how,
          ...(row.note !== undefined && { note: row.note }),
          sources: row.sources.flatMap((one) => sources.get(one) ?? []),
        },
      ]),
    ),
  );
}

/** Several short sayings, each ended with a full stop. */
const said = (...sayings: readonly (string | undefined)[]): string =>
  sayings.flatMap((words) => (words === undefined ? [] : sentence(words.trim()))).join(' ');

function levelEntries(scale: Scale): Entry[] {
  return scale.levels.map((level, place) => [
    `level.${scale.id}.${level.id}`,
    `${scale.name}: ${level.name}`,
    `Step ${place + 1} of ${scale.levels.length} on this scale, mildest first.`,
    scale,
  ]);
}

function asks(catalogue: Catalogue, scaleId: string, levelId: string | undefined): string {
  const scale = catalogue.scales.find((one) => one.id === scaleId);
  const level = scale?.levels.find((one) => one.id === levelId);
  return `${scale?.name ?? scaleId}: ${level?.name ?? levelId ?? ''}`;
}

function marksWords(catalogue: Catalogue, marks: readonly string[]): string {
  const means = new Map(catalogue.marks.map((mark) => [mark.id, mark.means]));
  if (marks.length === 0) return 'Nothing beyond the cautions of every bench.';
  return said(...marks.map((mark) => means.get(mark) ?? mark));
}

function substanceWords(row: Substance): string {
  const fact = (label: string, value: number | undefined, unit: string) =>
    value === undefined ? undefined : `${label} ${numberText(value)}${unit}`;
  return said(
    fact('Flash point', row.flashPointC, ' °C'),
    fact('Boils at', row.boilingPointC, ' °C'),
    fact('Vapour pressure near 20 °C', row.vapourPressurePa, ' Pa'),
    fact('Burns in air from', row.lelPercent, ' % by volume'),
    row.hazardCodes.length > 0 ? `Hazard codes ${joined(row.hazardCodes)}` : undefined,
    ...row.limits.map((limit) => {
      const much =
        limit.mgM3 === undefined
          ? `${numberText(limit.ppm ?? 0)} ppm`
          : `${numberText(limit.mgM3)} mg/m³`;
      return `${sentence(limit.kind).replace(/\.$/, '')} limit, ${limit.body}: ${much}`;
    }),
  );
}

/** Limits have sources of their own; a page of the substance shows them all. */
const withLimitSources = (row: Substance): Row => ({
  ...row,
  sources: [...new Set([...row.sources, ...row.limits.map((limit) => limit.source)])],
});

const BY_NAME: Readonly<Record<NonNullable<Oil['byName']>, string>> = {
  drying: 'Dries, whatever its iodine value',
  'semi-drying': 'Dries slowly, whatever its iodine value',
  'non-drying': 'Does not dry, whatever its iodine value',
  'does-not-dry': 'Does not dry; an iodine value says nothing of it',
};

const oilWords = (row: Oil): string =>
  said(
    row.byName && BY_NAME[row.byName],
    row.iodine && `Iodine value ${rangeText(row.iodine)} g per 100 g`,
  );

const chartWords = (row: GloveChartRow, names: Names): string =>
  said(
    joined(
      Object.entries(row.grades).map(
        ([material, grade]) => `${inside(names.name('material', material))} ${GLOVE_GRADES[grade]}`,
      ),
    ),
    row.limitedService ? 'For short contact only' : undefined,
  );

function breakthroughWords(row: Breakthrough): string {
  const minutes =
    row.minutesHigh === undefined
      ? `${numberText(row.minutesLow)} minutes or more`
      : `${rangeText({ low: row.minutesLow, high: row.minutesHigh })} minutes`;
  return said(
    row.thickness === 'unknown' ? minutes : `${minutes}, ${row.thickness} glove`,
    row.testedWarm ? 'Tested at hand warmth' : 'Tested at room warmth',
  );
}
