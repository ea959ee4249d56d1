import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Catalogue } from '../reasoning/index.js';
import { checkAiring } from './checks/airing.js';
import { checkApart } from './checks/apart.js';
import { checkBands } from './checks/bands.js';
import { checkHazardCodes } from './checks/hazardCodes.js';
import { makeChecking } from './checks/known.js';
import { checkLevels } from './checks/levels.js';
import { checkLines } from './checks/lines.js';
import { checkPairs } from './checks/pairs.js';
import { checkReferences } from './checks/references.js';
import { checkSdsSections } from './checks/sdsSections.js';
import { checkSources } from './checks/sources.js';
import { checkTags } from './checks/tags.js';
import { checkUsualBenches } from './checks/usualBenches.js';
import { deepFreeze } from './deepFreeze.js';
import { catalogueError } from './problems.js';
import { makeReader, type Table } from './reader.js';
import { readTables, type Tables } from './readTables.js';

const CHECKS = [
  checkApart,
  checkReferences,
  checkSources,
  checkTags,
  checkPairs,
  checkLevels,
  checkBands,
  checkAiring,
  checkHazardCodes,
  checkLines,
  checkSdsSections,
  checkUsualBenches,
];

/**
 * Everything the tables in `dir` say, checked and frozen. Throws a CatalogueError with every
 * problem there is, each with file, line and field, unless the tables are whole and agree.
 */
export function loadCatalogue(dir: URL | string): Catalogue {
  const folder = dir instanceof URL ? fileURLToPath(dir) : join(dir);
  const reader = makeReader(folder);
  const tables = readTables(reader, folder);
  const checking = makeChecking(tables, reader.say);
  for (const check of CHECKS) check(checking);
  const catalogue = asCatalogue(tables);
  if (reader.problems.length > 0 || catalogue === undefined) {
    throw catalogueError(reader.problems.toSorted(byPlace));
  }
  return deepFreeze(catalogue);
}

function byPlace(
  one: { readonly file: string; readonly line: number },
  other: { readonly file: string; readonly line: number },
): number {
  return one.file === other.file ? one.line - other.line : one.file < other.file ? -1 : 1;
}

function asCatalogue(tables: Tables): Catalogue | undefined {
  const { gloveFigures, oilFigures, sdsFigures, bandFigures, ragsFor } = tables;
  if (!gloveFigures || !oilFigures || !sdsFigures || !bandFigures || !ragsFor) return undefined;
  return {
    sources: rowsOf(tables.sources),
    marks: rowsOf(tables.marks),
    inks: rowsOf(tables.inks),
    additives: rowsOf(tables.additives),
    surfaces: rowsOf(tables.surfaces),
    agents: rowsOf(tables.agents),
    pairs: rowsOf(tables.pairs),
    substances: rowsOf(tables.substances),
    hazardCodes: rowsOf(tables.hazardCodes),
    oils: {
      schemes: rowsOf(tables.dryingSchemes),
      oils: rowsOf(tables.oils),
      ...oilFigures.row,
    },
    air: {
      situations: rowsOf(tables.airSituations),
      figures: rowsOf(tables.airFigures),
      cautions: rowsOf(tables.airCautions),
    },
    hydrocarbons: {
      columns: rowsOf(tables.hydrocarbonColumns),
      groups: rowsOf(tables.hydrocarbonGroups),
    },
    sds: { sections: rowsOf(tables.sdsSections), ...sdsFigures.row },
    gloves: {
      materials: rowsOf(tables.materials),
      chart: rowsOf(tables.chart),
      breakthrough: rowsOf(tables.breakthrough),
      ...gloveFigures.row,
    },
    equipment: rowsOf(tables.equipment),
    people: rowsOf(tables.people),
    others: rowsOf(tables.others),
    neverTogether: rowsOf(tables.neverTogether),
    scales: rowsOf(tables.scales),
    bandRules: { ...bandFigures.row, bands: rowsOf(tables.bands) },
    ragsFor: ragsFor.row,
    rules: rowsOf(tables.rules),
    streams: rowsOf(tables.streams),
    lines: rowsOf(tables.lines),
    firstAid: rowsOf(tables.firstAid),
    regions: rowsOf(tables.regions),
    usualBenches: rowsOf(tables.usualBenches),
  };
}

function rowsOf<Row>({ rows }: Table<Row>): readonly Row[] {
  return rows.map(({ row }) => row);
}
