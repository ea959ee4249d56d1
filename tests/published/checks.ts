import { z } from 'zod';
import {
  bestGloves,
  chartGrade,
  dryingClass,
  flammableClass,
  generatorCategory,
  gloveType,
  isIgnitableWaste,
  mayRagsSelfHeat,
  permeationLevel,
  wipesFaults,
} from '../../server/reasoning/index.js';
import { wearMinutes } from '../../server/reasoning/gloves/glovesThatHold.js';
import { catalogue } from '../support/rules.js';
import { aCheck } from './aCheck.js';
import { airChecks } from './airChecks.js';

/** The row of a table by id; a case about no row fails. */
const rowOf = <Row extends { readonly id: string }>(rows: readonly Row[], id: string): Row => {
  const row = rows.find((each) => each.id === id);
  if (row === undefined) throw new Error(`no row ${id}`);
  return row;
};

const { gloves, oils, sds } = catalogue;
const Id = z.string();
const regionOf = (id: string) => rowOf(catalogue.regions, id);

/** Answers come from the project's own functions and tables; nothing is worked out here. */
export const checks = {
  /* Liquids that burn, substances, statements, data sheets */
  'flammable class': aCheck(
    z.strictObject({ flashPointC: z.number(), boilingPointC: z.number() }),
    flammableClass,
  ),
  substance: aCheck(z.strictObject({ substance: Id }), ({ substance }) =>
    rowOf(catalogue.substances, substance),
  ),
  'printed limit': aCheck(
    z.strictObject({ substance: Id, body: z.string(), kind: z.string() }),
    ({ substance, body, kind }) =>
      rowOf(catalogue.substances, substance).limits.find(
        (limit) => limit.body === body && limit.kind === kind,
      ),
  ),
  statement: aCheck(z.strictObject({ code: Id }), ({ code }) => rowOf(catalogue.hazardCodes, code)),
  'data-sheet section': aCheck(z.strictObject({ field: z.string() }), ({ field }) =>
    sds.sections.filter((row) => row.holds.includes(field)).map((row) => row.section),
  ),

  /* Oils */
  'drying class': aCheck(
    z.strictObject({ iodineValue: z.number(), scheme: Id }),
    ({ iodineValue, scheme }) => dryingClass(iodineValue, rowOf(oils.schemes, scheme)),
  ),
  scheme: aCheck(z.strictObject({ scheme: Id }), ({ scheme }) => rowOf(oils.schemes, scheme)),
  oil: aCheck(z.strictObject({ oil: Id }), ({ oil }) => rowOf(oils.oils, oil)),
  'rags heat': aCheck(z.strictObject({ oil: Id.optional() }), ({ oil }) =>
    mayRagsSelfHeat(oil === undefined ? {} : rowOf(oils.oils, oil), oils.selfHeatsFrom),
  ),

  /* Gloves */
  'chart letter': aCheck(
    z.strictObject({ chemical: z.string(), material: Id }),
    ({ chemical, material }) => chartGrade(gloves, chemical, material),
  ),
  'best gloves': aCheck(
    z.strictObject({ chemicals: z.array(z.string()), without: z.array(Id) }),
    ({ chemicals, without }) => bestGloves(gloves, chemicals, without),
  ),
  'permeation level': aCheck(z.strictObject({ minutes: z.number() }), ({ minutes }) =>
    permeationLevel(gloves, minutes),
  ),
  'glove type': aCheck(
    z.strictObject({ minutes: z.record(z.string(), z.number()) }),
    ({ minutes }) => gloveType(gloves, minutes),
  ),
  'test chemical': aCheck(z.strictObject({ letter: z.string() }), ({ letter }) =>
    gloves.letters.filter((row) => row.letter === letter).map((row) => row.chemical),
  ),
  'test letter': aCheck(z.strictObject({ chemical: z.string() }), ({ chemical }) =>
    gloves.letters.filter((row) => row.chemical === chemical).map((row) => row.letter),
  ),
  'wear minutes': aCheck(
    z.strictObject({ agent: Id, material: Id, thickness: z.enum(['thin', 'thick']) }),
    ({ agent, material, thickness }) =>
      wearMinutes(gloves, rowOf(catalogue.agents, agent), material, thickness),
  ),
  breakthrough: aCheck(z.strictObject({ row: Id }), ({ row }) => rowOf(gloves.breakthrough, row)),

  /* Surfaces */
  pair: aCheck(z.strictObject({ surface: Id, agent: Id }), ({ surface, agent }) =>
    rowOf(catalogue.pairs, `${surface}.${agent}`),
  ),

  /* Waste, regions, first aid */
  wipes: aCheck(
    z.strictObject({
      region: Id,
      days: z.number(),
      label: z.string(),
      closed: z.boolean(),
      freeLiquid: z.boolean(),
      solvent: z.string(),
      thrownAway: z.boolean(),
    }),
    ({ region, ...can }) => wipesFaults(regionOf(region), can),
  ),
  'waste maker': aCheck(
    z.strictObject({ region: Id, kg: z.number(), acuteKg: z.number() }),
    ({ region, ...month }) => generatorCategory(regionOf(region), month) ?? 'no such categories',
  ),
  'ignitable waste': aCheck(
    z.strictObject({
      region: Id,
      flashPointC: z.number().optional(),
      alcoholInWaterPercent: z.number().optional(),
      selfHeating: z.boolean().optional(),
    }),
    ({ region, ...waste }) => isIgnitableWaste(regionOf(region), waste),
  ),
  'waste code': aCheck(
    z.strictObject({ region: Id, code: z.string() }),
    ({ region, code }) => regionOf(region).wasteCodes.filter((row) => row.code === code)[0],
  ),
  'waste codes': aCheck(z.strictObject({ region: Id, waste: z.string() }), ({ region, waste }) =>
    regionOf(region)
      .wasteCodes.filter((row) => row.for.includes(waste))
      .map((row) => row.code),
  ),
  threshold: aCheck(z.strictObject({ region: Id, name: z.string() }), ({ region, name }) =>
    regionOf(region).thresholds.find((row) => row.name === name),
  ),
  standard: aCheck(z.strictObject({ region: Id, title: z.string() }), ({ region, title }) =>
    regionOf(region).standards.find((row) => row.title === title),
  ),
  region: aCheck(z.strictObject({ region: Id }), ({ region }) => regionOf(region)),
  'first aid': aCheck(z.strictObject({ row: Id }), ({ row }) => rowOf(catalogue.firstAid, row)),

  /* Air and vapour */
  ...airChecks,

  /* What lines say */
  line: aCheck(z.strictObject({ line: Id }), ({ line }) => rowOf(catalogue.lines, line)),
  'lines that speak of': aCheck(z.strictObject({ words: z.string() }), ({ words }) =>
    catalogue.lines
      .filter((row) => new RegExp(words, 'i').test(`${row.head} ${row.rest}`))
      .map((row) => row.id),
  ),
} as const;
