import { known, type Checking } from './known.js';

/** The health ranks name known codes, and every code of an agent's substance has one. */
export function checkHazardCodes({ tables, say, expect }: Checking): void {
  const figures = tables.bandFigures;
  if (figures === undefined) return;
  const { health, fireCodes } = figures.row;
  const ranked = new Set([...Object.keys(health), ...Object.keys(fireCodes)]);
  const code = known('a hazard code', tables.hazardCodes);
  for (const id of ranked) expect(figures, [id in health ? 'health' : 'fireCodes', id], id, code);
  const ofAgents = new Set(tables.agents.rows.map(({ row }) => row.substance));
  for (const { file, path, row } of tables.substances.rows) {
    if (!ofAgents.has(row.id)) continue;
    row.hazardCodes.forEach((id, place) => {
      if (ranked.has(id)) return;
      say(file, [...path, 'hazardCodes', place], id, 'a code with a rank in bandRules.health');
    });
  }
}
