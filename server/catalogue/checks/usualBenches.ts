import { known, type Checking } from './known.js';

/** A usual bench holds nothing that no table knows. */
export function checkUsualBenches({ tables, expect, expectAll }: Checking): void {
  const ink = known('an ink id', tables.inks);
  const additive = known('an additive or extender id', tables.additives, tables.inks);
  const surface = known('a surface id', tables.surfaces);
  const equipment = known('an equipment id', tables.equipment);
  const agent = known('an agent id', tables.agents);
  const atHand = known('an agent or other chemical id', tables.agents, tables.others);
  const person = known('a person id', tables.people);
  const region = known('a region id', tables.regions);

  for (const at of tables.usualBenches.rows) {
    const { bench } = at.row;
    bench.mixes.forEach((mix, place) => {
      const path = ['bench', 'mixes', place];
      mix.parts.forEach((part, nth) => {
        expect(at, [...path, 'parts', nth, 'ink'], part.ink, ink);
      });
      mix.additives?.forEach((part, nth) => {
        expect(at, [...path, 'additives', nth, 'additive'], part.additive, additive);
      });
      expectAll(at, [...path, 'on'], mix.on, surface);
    });
    expectAll(at, ['bench', 'surfaces'], bench.surfaces, surface);
    expectAll(at, ['bench', 'equipment'], bench.equipment, equipment);
    expectAll(at, ['bench', 'agentsAtHand'], bench.agentsAtHand, atHand);
    bench.uses?.forEach((use, place) => {
      expect(at, ['bench', 'uses', place, 'agent'], use.agent, agent);
    });
    expectAll(at, ['bench', 'people', 'flags'], bench.people?.flags, person);
    if (bench.region !== undefined) expect(at, ['bench', 'region'], bench.region, region);
  }
}
