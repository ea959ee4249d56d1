import {
  hydrocarbonLimit,
  type HydrocarbonPart,
  type HydrocarbonRules,
} from '../../reasoning/index.js';
import { SHARE_SLACK } from './limits.js';
import { asks, mayAsk, mayChoose, type Values } from './sumsFields.js';
import { aSum, type Fault } from './sumsSum.js';

const WHOLE = 100;

/** Limit of a hydrocarbon liquid from its make-up, by the group values of one published column. */
export const makeHydrocarbonLimit = (rules: HydrocarbonRules) => {
  const columns = new Map(rules.columns.map(({ id, name }) => [id, name]));
  const columnOf = new Map(rules.groups.map(({ id, column }) => [id, column]));
  const part = {
    share: asks('percent', 0.01, WHOLE),
    group: mayChoose(
      rules.groups.map(({ id, name, column }) => ({ id, name, group: columns.get(column) ?? '' })),
    ),
    limit: mayAsk('mgM3', 0.1, 10_000),
  };
  const parted = ({ share, group, limit }: Values<typeof part>): HydrocarbonPart =>
    group === undefined
      ? { share: share.base / WHOLE, limitMgM3: limit?.base ?? 0 }
      : { share: share.base / WHOLE, group };

  return aSum({
    id: 'hydrocarbon-limit',
    fields: {},
    lists: { parts: { fields: part, most: 20, shown: 4, isOptional: false } },
    answers: { rounded: 'mgM3', raw: 'mgM3', column: 'id' },
    rowAnswers: {},
    sources: ['eh40-reciprocal', 'acgih-appendix-h', 'esig-reciprocal-video'],
    wrong: (_values, { parts }) => [
      ...parts.flatMap(({ group, limit }, row): readonly Fault[] =>
        (group === undefined) === (limit === undefined)
          ? [{ path: `/parts/${row}/group`, accepts: 'sums.wrong.groupOrLimit' }]
          : [],
      ),
      ...parts.flatMap(({ group }, row): readonly Fault[] => {
        const first = parts.find((one) => one.group !== undefined)?.group ?? '';
        return group === undefined || columnOf.get(group) === columnOf.get(first)
          ? []
          : [{ path: `/parts/${row}/group`, accepts: 'sums.wrong.columns' }];
      }),
      ...(Math.abs(parts.reduce((sum, { share }) => sum + share.base, 0) - WHOLE) > SHARE_SLACK
        ? [{ path: '/parts/0/sharePercent', accepts: 'sums.wrong.shares' }]
        : []),
    ],
    work: (_values, { parts }) => {
      const found = hydrocarbonLimit(rules, parts.map(parted));
      return {
        figures: { rounded: found?.roundedMgM3, raw: found?.rawMgM3, column: found?.column },
      };
    },
  });
};
