import type { Catalogue } from '../../reasoning/index.js';
import { airChanges } from './sumsAirChanges.js';
import { convert } from './sumsConvert.js';
import { dilution } from './sumsDilution.js';
import { evaporation } from './sumsEvaporation.js';
import { flammableLimit } from './sumsFlammableLimit.js';
import { makeHydrocarbonLimit } from './sumsHydrocarbonLimit.js';
import { mixture } from './sumsMixture.js';
import { purge } from './sumsPurge.js';
import type { Sum } from './sumsSum.js';

/** The small sums of ventilation, in the order of the page. */
export const makeSums = (catalogue: Catalogue): readonly Sum[] => [
  dilution,
  airChanges,
  purge,
  evaporation,
  convert,
  mixture,
  makeHydrocarbonLimit(catalogue.hydrocarbons),
  flammableLimit,
];
