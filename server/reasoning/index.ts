/** The front door of reasoning: the only file of it that others may import. */
export * from './types.js';
export { type Reasoner, makeReasoner } from './sheet/makeReasoner.js';
export { type FlammableClass, flammableClass } from './hazard/flammableClass.js';
export {
  type DryingClass,
  type DryingScheme,
  type OilFacts,
  dryingClass,
  mayRagsSelfHeat,
} from './rags/dryingClass.js';
export { PER_THING, SPOKEN } from './sheet/lineTexts.js';
