import { known, type Checking, type Known } from './known.js';

/** Every column that names a row of another table names one that is there. */
export function checkReferences(checking: Checking): void {
  const { tables, expect, expectAll } = checking;
  const agent = known('an agent id', tables.agents);
  const mark = known('a mark id', tables.marks);
  const surface = known('a surface id', tables.surfaces);
  const substance = known('a substance id', tables.substances);
  const ink = known('an ink id', tables.inks);
  const additive = known('an additive or extender id', tables.additives, tables.inks);
  const material = known('a glove material id', tables.materials);
  const region = known('a region id', tables.regions);

  for (const at of tables.inks.rows) {
    const { marks, liftsWet, liftsDried, never, finishWith, milder } = at.row;
    expectAll(at, ['marks'], marks, mark);
    expectAll(at, ['liftsWet'], liftsWet, agent);
    expectAll(at, ['liftsDried'], liftsDried, agent);
    expectAll(at, ['never'], never, agent);
    expectAll(at, ['finishWith'], finishWith, agent);
    expectAll(at, ['milder'], milder, ink);
  }
  for (const at of tables.additives.rows) {
    expectAll(at, ['marks'], at.row.marks, mark);
    expectAll(at, ['substances'], at.row.substances, substance);
    expectAll(at, ['lifts'], at.row.lifts, agent);
    expectAll(at, ['never'], at.row.never, agent);
    expectAll(at, ['milder'], at.row.milder, additive);
  }
  for (const at of tables.surfaces.rows) {
    expectAll(at, ['marks'], at.row.marks, mark);
    expectAll(at, ['brings'], at.row.brings, surface);
  }
  for (const at of tables.agents.rows) {
    const { glove } = at.row;
    expect(at, ['substance'], at.row.substance, substance);
    expectAll(at, ['marks'], at.row.marks, mark);
    expectAll(at, ['followUps'], at.row.followUps, agent);
    expectAll(at, ['glove', 'chartRows'], glove.chartRows, known('a glove chart id', tables.chart));
    expectAll(at, ['glove', 'chemicals'], glove.chemicals, {
      what: 'a chemical of the breakthrough table',
      ids:
        tables.breakthrough.ids && new Set(tables.breakthrough.rows.map((it) => it.row.chemical)),
    });
    for (const id of Object.keys(glove.standIn ?? {})) {
      expect(at, ['glove', 'standIn', id], id, material);
    }
  }
  for (const at of tables.chart.rows) {
    for (const id of Object.keys(at.row.grades)) expect(at, ['grades', id], id, material);
  }
  for (const at of tables.breakthrough.rows) expect(at, ['material'], at.row.material, material);
  for (const at of [...tables.equipment.rows, ...tables.others.rows]) {
    expectAll(at, ['marks'], at.row.marks, mark);
  }
  for (const at of tables.substances.rows) {
    expectAll(at, ['hazardCodes'], at.row.hazardCodes, codes(checking, 'hazard', 'supplemental'));
    expectAll(
      at,
      ['precautionaryCodes'],
      at.row.precautionaryCodes,
      codes(checking, 'precautionary'),
    );
    at.row.limits.forEach((limit, place) => {
      expect(at, ['limits', place, 'region'], limit.region, region);
    });
  }
  for (const at of tables.hydrocarbonGroups.rows) {
    expect(at, ['column'], at.row.column, known('a column id', tables.hydrocarbonColumns));
  }
  for (const at of tables.rules.rows) {
    expectAll(at, ['streams'], at.row.streams, known('a stream id', tables.streams));
  }
  for (const at of tables.regions.rows) {
    expectAll(at, ['limitsOf'], at.row.limitsOf, region);
    at.row.wasteCodes.forEach((code, place) => {
      expectAll(at, ['wasteCodes', place, 'for'], code.for, {
        what: 'a stream id, used-solvent, ink or wash-water',
        ids: tables.streams.ids && new Set([...tables.streams.ids, ...WASTES]),
      });
    });
  }
}

/** Wastes, beside the rag streams, that a region's codes are offered for. */
const WASTES = ['used-solvent', 'ink', 'wash-water'];

/** Codes of these kinds, and those whose own row is not good enough to say its kind. */
function codes({ tables }: Checking, ...kinds: readonly string[]): Known {
  const ids = new Set(tables.hazardCodes.ids);
  for (const { row } of tables.hazardCodes.rows) if (!kinds.includes(row.kind)) ids.delete(row.id);
  return { what: `a code of the kind ${kinds.join(' or ')}`, ids: tables.hazardCodes.ids && ids };
}
