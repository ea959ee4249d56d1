import { evaporationChecks } from './air/evaporation.js';
import { limitsChecks } from './air/limits.js';
import { roomChecks } from './air/room.js';
import { thinningChecks } from './air/thinning.js';
import { zonesChecks } from './air/zones.js';

/** Small sums of ventilation, and the air of a room. */
export const airChecks = {
  ...thinningChecks,
  ...roomChecks,
  ...zonesChecks,
  ...evaporationChecks,
  ...limitsChecks,
} as const;
