import { lflAt, lflOfMixture, shareOfLfl, totalPercent } from '../../reasoning/index.js';
import { asks, mayAsk } from './sumsFields.js';
import { aSum, orNever } from './sumsSum.js';

const PERCENT = 100;

/** How near vapours together come to where air with them can burn. */
export const flammableLimit = aSum({
  id: 'flammable-limit',
  fields: { temperature: mayAsk('temperature', -20, 400) },
  lists: {
    parts: {
      fields: { level: asks('inAir', 0, 100), lfl: asks('percent', 0.1, 100) },
      most: 20,
      shown: 3,
      isOptional: false,
    },
  },
  answers: { shareOfLfl: 'percent', mixtureLfl: 'percent', total: 'percent' },
  rowAnswers: { parts: { lflThen: 'percent' } },
  sources: ['flammable-mixing-2000', 'process-safety-textbook', 'nfpa-86'],
  wrong: () => [],
  work: ({ temperature }, { parts }) => {
    const plain = parts.map(({ level, lfl }) => ({
      percent: level.base,
      lflPercent: temperature ? lflAt(lfl.base, temperature.base) : lfl.base,
    }));
    const share = shareOfLfl(plain);
    return {
      figures: {
        shareOfLfl: share === undefined ? null : share * PERCENT,
        mixtureLfl: orNever(lflOfMixture(plain)),
        total: totalPercent(plain),
      },
      rows: {
        parts: plain.map(({ lflPercent }) => ({ lflThen: temperature && lflPercent })),
      },
    };
  },
});
