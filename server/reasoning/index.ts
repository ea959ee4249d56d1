/** The front door of reasoning: the only file of it that others may import. */
export * from './types.js';
export { compare } from './book/compare.js';
export { largestOf } from './book/largestOf.js';
export { type Reasoner, makeReasoner } from './sheet/makeReasoner.js';
export { flammableClass } from './hazard/flammableClass.js';
export { dryingClass, mayRagsSelfHeat } from './rags/dryingClass.js';
export { generatorCategory, isIgnitableWaste, wipesFaults } from './rags/waste.js';
export { bestGloves, chartGrade } from './gloves/glovesThatHold.js';
export { gloveType, permeationLevel } from './gloves/permeation.js';
export { SPOKEN_TEXTS } from './sheet/lineTexts.js';
