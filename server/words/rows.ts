import type {
  AirSituation,
  Breakthrough,
  Catalogue,
  GloveChartRow,
  How,
  HydrocarbonGroup,
  Oil,
  Row,
  Scale,
  Source,
  Substance,
} from '../reasoning/index.js';
import { numberText, rangeText } from './amounts.js';
import { inside, joined, opening, sentence } from './joined.js';
import { longDate } from './longDate.js';
import type { Messages } from './messages.js';
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

/** All rows of all tables in words, by the id that stands in `because`. */
export function rowTexts(
  catalogue: Catalogue,
  names: Names,
  messages: Messages,
): ReadonlyMap<string, RowText> {
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
      said(messages(`grade.${row.grade}`), row.why, row.studioWhy),
      row,
    ]),
    substances: catalogue.substances.map((row) => [
      `substance.${row.id}`,
      row.name,
      substanceWords(row, messages),
      withLimitSources(row),
    ]),
    'hazard-codes': catalogue.hazardCodes.map((row) => [`code.${row.id}`, row.id, row.text, row]),
    bands: catalogue.bandRules.bands.map((row) => [
      `band.${row.id}`,
      opening(row.name),
      said(...Object.entries(row.require).map(([scale, level]) => asks(catalogue, scale, level))),
      row,
    ]),
    scales: catalogue.scales.flatMap((row) => levelEntries(row, messages)),
    rags: catalogue.streams.map((row) => [
      `stream.${row.id}`,
      row.name,
      said(row.container, row.emptied),
      row,
    ]),
    equipment: catalogue.equipment.map((row) => [
      `equipment.${row.id}`,
      row.name,
      marksWords(catalogue, row.marks, messages),
      row,
    ]),
    people: catalogue.people.map((row) => [`person.${row.id}`, row.name, row.ask, row]),
    others: catalogue.others.map((row) => [
      `other.${row.id}`,
      row.name,
      marksWords(catalogue, row.marks, messages),
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
        chartWords(row, names, messages),
        row,
      ]),
      ...catalogue.gloves.breakthrough.map((row): Entry => [
        `breakthrough.${row.id}`,
        messages('row.through', {
          chemical: row.chemical,
          material: inside(names.name('material', row.material)),
        }),
        breakthroughWords(row, messages),
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
        messages('row.numbers', {
          date: longDate(row.checkedOn),
          in: inside(row.checkedIn),
        }),
      ),
      row,
    ]),
    oils: [
      ...catalogue.oils.oils.map((row): Entry => [
        `oil.${row.id}`,
        row.name,
        oilWords(row, messages),
        row,
      ]),
      ...catalogue.oils.schemes.map((row): Entry => [
        `drying.${row.id}`,
        row.name,
        messages('row.scheme', { low: row.semiDryingFrom, high: row.semiDryingTo }),
        row,
      ]),
    ],
    'hydrocarbon-groups': [
      ...catalogue.hydrocarbons.columns.map((row): Entry => [
        `hydrocarbon.${row.id}`,
        row.name,
        messages(row.rounding === undefined ? 'row.unrounded' : 'row.rounded'),
        row,
      ]),
      ...catalogue.hydrocarbons.groups.map((row): Entry => [
        `hydrocarbon.${row.id}`,
        row.name,
        groupWords(row, catalogue, messages),
        row,
      ]),
    ],
    airing: [
      ...catalogue.air.situations.map((row): Entry => [
        `airing.${row.id}`,
        opening(levelName(catalogue, row.id)),
        situationWords(row, messages),
        row,
      ]),
      ...catalogue.air.figures.map((row): Entry => [
        `airing.${row.id}`,
        row.name,
        messages('row.figure', { n: numberText(row.value), unit: row.unit }),
        row,
      ]),
      ...catalogue.air.cautions.map((row): Entry => [`caution.${row.id}`, row.id, row.words, row]),
    ],
    'sds-sections': catalogue.sds.sections.map((row) => [
      `sds.${row.id}`,
      messages('row.section', { section: row.section, heading: row.heading }),
      said(messages('row.holds', { things: joined(row.holds) })),
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

function levelEntries(scale: Scale, messages: Messages): Entry[] {
  return scale.levels.map((level, place) => [
    `level.${scale.id}.${level.id}`,
    `${scale.name}: ${level.name}`,
    messages('row.step', { step: place + 1, of: scale.levels.length }),
    scale,
  ]);
}

function asks(catalogue: Catalogue, scaleId: string, levelId: string | undefined): string {
  const scale = catalogue.scales.find((one) => one.id === scaleId);
  const level = scale?.levels.find((one) => one.id === levelId);
  return `${scale?.name ?? scaleId}: ${level?.name ?? levelId ?? ''}`;
}

function marksWords(catalogue: Catalogue, marks: readonly string[], messages: Messages): string {
  const means = new Map(catalogue.marks.map((mark) => [mark.id, mark.means]));
  if (marks.length === 0) return messages('row.noMarks');
  return said(...marks.map((mark) => means.get(mark) ?? mark));
}

function substanceWords(row: Substance, messages: Messages): string {
  const fact = (key: string, value: number | undefined) =>
    value === undefined ? undefined : messages(key, { n: numberText(value) });
  return said(
    fact('row.flash', row.flashPointC),
    fact('row.boils', row.boilingPointC),
    fact('row.vapour', row.vapourPressurePa),
    fact('row.burns', row.lelPercent),
    row.hazardCodes.length > 0
      ? messages('row.codes', { codes: joined(row.hazardCodes) })
      : undefined,
    ...row.limits.map((limit) => {
      const much =
        limit.mgM3 === undefined
          ? `${numberText(limit.ppm ?? 0)} ppm`
          : `${numberText(limit.mgM3)} mg/m³`;
      return messages('row.limit', { kind: opening(limit.kind), body: limit.body, much });
    }),
  );
}

/** Limits have sources of their own; a page of the substance shows them all. */
const withLimitSources = (row: Substance): Row => ({
  ...row,
  sources: [...new Set([...row.sources, ...row.limits.map((limit) => limit.source)])],
});

/** Name of a level of the air scale. */
const levelName = (catalogue: Catalogue, levelId: string): string =>
  catalogue.scales.find((scale) => scale.id === 'air')?.levels.find((level) => level.id === levelId)
    ?.name ?? levelId;

function situationWords(row: AirSituation, messages: Messages): string {
  const { airChangesPerHour: changes, mixingFactor, captured } = row;
  return said(
    messages('row.situation', {
      low: numberText(changes.low),
      high: numberText(changes.high),
      counted: numberText(changes.counted),
      mixing: numberText(mixingFactor.counted),
    }),
    captured.counted > 0
      ? messages('row.caught', { n: numberText(captured.counted * 100) })
      : undefined,
  );
}

const oilWords = (row: Oil, messages: Messages): string =>
  said(
    row.byName && messages(`oil.${row.byName}`),
    row.iodine && messages('row.iodine', { range: rangeText(row.iodine) }),
  );

const groupWords = (row: HydrocarbonGroup, catalogue: Catalogue, messages: Messages): string => {
  const column = catalogue.hydrocarbons.columns.find(({ id }) => id === row.column);
  return messages('row.group', {
    column: column?.name ?? row.column,
    n: numberText(row.limitMgM3),
  });
};

const chartWords = (row: GloveChartRow, names: Names, messages: Messages): string =>
  said(
    joined(
      Object.entries(row.grades).map(
        ([material, grade]) =>
          `${inside(names.name('material', material))} ${messages(`glove.${grade}`)}`,
      ),
    ),
    row.limitedService ? messages('row.short') : undefined,
  );

function breakthroughWords(row: Breakthrough, messages: Messages): string {
  const minutes =
    row.minutesHigh === undefined
      ? messages('row.minutesFrom', { n: numberText(row.minutesLow) })
      : messages('row.minutes', {
          range: rangeText({ low: row.minutesLow, high: row.minutesHigh }),
        });
  return said(
    row.thickness === 'unknown'
      ? minutes
      : messages('row.glove', { minutes, thickness: row.thickness }),
    messages(row.testedWarm ? 'row.warm' : 'row.room'),
  );
}
