import type { BenchInput } from '../../server/reasoning/index.js';
import { catalogue } from './rules.js';

const surfaces = catalogue.surfaces.map((row) => row.id);
const inks = [...catalogue.inks.map((row) => row.id), 'my tin'];
const additives = catalogue.additives.map((row) => ({ additive: row.id, percent: 30 }));

/**
 * Benches that between them make the sheet say all it can: every ink on every surface in every
 * region, dried and fresh, with all that is in the room, unknown things, bottles and everybody.
 */
export const everyBench: readonly BenchInput[] = [
  ...inks.flatMap((ink, index) =>
    catalogue.regions.map((region, place): BenchInput => ({
      region: region.id,
      mixes: [
        {
          name: 'all of it',
          parts: [{ ink }],
          additives: additives.slice(index % 5, (index % 5) + 8),
          dried: place % 2 === 1,
        },
      ],
      surfaces: [...surfaces, 'pasta machine'],
      equipment: [...catalogue.equipment.map((row) => row.id), 'old mangle'],
      ...(place % 3 === 0 && { agentsAtHand: ['bleach', 'household-ammonia', 'veg-oil'] }),
      uses: [
        { agent: 'acetone', ml: 5 },
        { agent: 'grey bottle', ml: 3 },
      ],
      bottles: [{ agent: 'white-spirit', sdsDate: '2025-01-01', flashPointC: 62 }],
      room: { air: 'room-air', volumeM3: 60 },
      people: { count: 9, under16: true, flags: catalogue.people.map((row) => row.id) },
    })),
  ),
  ...catalogue.usualBenches.map((row) => row.bench),
];
