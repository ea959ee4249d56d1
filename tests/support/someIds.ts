import type { KnownIds } from '../../server/web/forms/known.js';

/** A handful of known ids, enough to read benches with. */
export const someIds: KnownIds = {
  regions: new Set(['uk', 'us', 'other']),
  inks: new Set(['oil-relief', 'water-washable-oil', 'transparent-base']),
  additives: new Set(['cobalt-drier', 'clove-oil']),
  extenders: new Set(['transparent-base']),
  surfaces: new Set(['glass-slab', 'rubber-roller', 'lino-block']),
  equipment: new Set(['etching-press', 'hotplate']),
};
