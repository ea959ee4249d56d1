import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { Region } from '../reasoning/index.js';
import type { Reader, Table } from './reader.js';
import { AirCautionRow, AirFigureRow, AirSituationRow } from './schemas/air.js';
import { AgentRow, HazardCodeRow, SubstanceRow } from './schemas/agents.js';
import { UsualBenchRow } from './schemas/bench.js';
import * as gloves from './schemas/gloves.js';
import { HydrocarbonColumnRow, HydrocarbonGroupRow } from './schemas/hydrocarbons.js';
import { AdditiveRow, InkRow, MarkRow } from './schemas/inks.js';
import { DryingSchemeRow, OilFigures, OilRow } from './schemas/oils.js';
import * as precautions from './schemas/precautions.js';
import { SourceRow } from './schemas/row.js';
import { SdsFigures, SdsSectionRow } from './schemas/sdsSections.js';
import { EquipmentRow, OtherRow, PairRow, PersonRow, SurfaceRow } from './schemas/surfaces.js';
import { FirstAidRow, LineRow, RegionRow } from './schemas/words.js';

/** The regions that must be there. */
const REGION_IDS = ['us', 'uk', 'eu', 'ie', 'de', 'fr', 'ca', 'au', 'nz', 'other'] as const;

export type Tables = ReturnType<typeof readTables>;

/** Every file of rules/, each row read by its schema. What is wrong is noted in the reader. */
export function readTables(reader: Reader, dir: string) {
  const whole = <Row extends { readonly id: string }>(name: string, schema: z.ZodType<Row>) =>
    reader.list(reader.open(name), [], schema);
  return {
    sources: whole('sources.yaml', SourceRow),
    marks: whole('marks.yaml', MarkRow),
    inks: whole('inks.yaml', InkRow),
    additives: whole('additives.yaml', AdditiveRow),
    surfaces: whole('surfaces.yaml', SurfaceRow),
    agents: whole('agents.yaml', AgentRow),
    pairs: whole('pairs.yaml', PairRow),
    substances: whole('substances.yaml', SubstanceRow),
    hazardCodes: whole('hazard-codes.yaml', HazardCodeRow),
    equipment: whole('equipment.yaml', EquipmentRow),
    people: whole('people.yaml', PersonRow),
    streams: whole('rags.yaml', precautions.StreamRow),
    lines: whole('lines.yaml', LineRow),
    firstAid: whole('first-aid.yaml', FirstAidRow),
    usualBenches: whole('usual-benches.yaml', UsualBenchRow),
    regions: readRegions(reader, dir),
    ...readGloves(reader),
    ...readOils(reader),
    ...readAiring(reader),
    ...readHydrocarbons(reader),
    ...readSdsSections(reader),
    ...readPrecautions(reader),
    ...readNeverTogether(reader),
  };
}

function readGloves(reader: Reader) {
  const file = reader.open('gloves.yaml');
  const figures = without(file.value, ['materials', 'chart', 'breakthrough']);
  return {
    materials: reader.list(file, ['materials'], gloves.GloveMaterialRow),
    chart: reader.list(file, ['chart'], gloves.GloveChartRowRow),
    breakthrough: reader.list(file, ['breakthrough'], gloves.BreakthroughRow),
    gloveFigures: reader.one(file, [], gloves.GloveFigures, figures),
  };
}

function readOils(reader: Reader) {
  const file = reader.open('oils.yaml');
  const figures = without(file.value, ['schemes', 'oils']);
  return {
    dryingSchemes: reader.list(file, ['schemes'], DryingSchemeRow),
    oils: reader.list(file, ['oils'], OilRow),
    oilFigures: reader.one(file, [], OilFigures, figures),
  };
}

function readAiring(reader: Reader) {
  const file = reader.open('airing.yaml');
  const top = without(file.value, ['situations', 'figures', 'cautions']);
  reader.one(file, [], z.strictObject({}), top);
  return {
    airSituations: reader.list(file, ['situations'], AirSituationRow),
    airFigures: reader.list(file, ['figures'], AirFigureRow),
    airCautions: reader.list(file, ['cautions'], AirCautionRow),
  };
}

function readHydrocarbons(reader: Reader) {
  const file = reader.open('hydrocarbon-groups.yaml');
  reader.one(file, [], z.strictObject({}), without(file.value, ['columns', 'groups']));
  return {
    hydrocarbonColumns: reader.list(file, ['columns'], HydrocarbonColumnRow),
    hydrocarbonGroups: reader.list(file, ['groups'], HydrocarbonGroupRow),
  };
}

function readSdsSections(reader: Reader) {
  const file = reader.open('sds-sections.yaml');
  return {
    sdsSections: reader.list(file, ['sections'], SdsSectionRow),
    sdsFigures: reader.one(file, [], SdsFigures, without(file.value, ['sections'])),
  };
}

function readPrecautions(reader: Reader) {
  const file = reader.open('precautions.yaml');
  const top = without(file.value, ['scales', 'bandRules', 'ragsFor', 'rules']);
  reader.one(file, [], z.strictObject({}), top);
  const bandRules = (file.value as { bandRules?: unknown } | null | undefined)?.bandRules;
  const figures = without(bandRules, ['bands']);
  return {
    scales: reader.list(file, ['scales'], precautions.ScaleRow),
    bands: reader.list(file, ['bandRules', 'bands'], precautions.BandRow),
    bandFigures: reader.one(file, ['bandRules'], precautions.BandFigures, figures),
    ragsFor: reader.one(file, ['ragsFor'], precautions.RagsForRow),
    rules: reader.list(file, ['rules'], precautions.RuleRow),
  };
}

function readNeverTogether(reader: Reader) {
  const file = reader.open('never-together.yaml');
  reader.one(file, [], z.strictObject({}), without(file.value, ['others', 'pairs']));
  return {
    others: reader.list(file, ['others'], OtherRow),
    neverTogether: reader.list(file, ['pairs'], precautions.NeverTogetherRow),
  };
}

function readRegions(reader: Reader, dir: string): Table<Region> {
  const folder = join(dir, 'regions');
  const files = existsSync(folder) ? readdirSync(folder).filter((it) => it.endsWith('.yaml')) : [];
  const found = files.map((name) => name.replace(/\.yaml$/, '')).toSorted();
  const ids = [...new Set<string>([...REGION_IDS, ...found])];
  const rows = ids.flatMap((id) => {
    const region = reader.one(reader.open(`regions/${id}.yaml`), [], RegionRow);
    if (region !== undefined && region.row.id !== id) {
      reader.say(region.file, ['id'], region.row.id, `the file's own name, ${id}`);
    }
    return region ?? [];
  });
  return { rows, ids: new Set(ids) };
}

/** A mapping less some of its keys; what is not a mapping, as it is. */
function without(value: unknown, keys: readonly string[]): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).filter(([key]) => !keys.includes(key)));
}
