import {
  airPerPerson,
  changesByFloor,
  changesByFlow,
  flowFromHalfLife,
  minutesToRemove,
} from '../../reasoning/index.js';
import { mayAsk, type Fields, type Values } from './sumsFields.js';
import { aSum, orNever } from './sumsSum.js';

const MIN_IN_HOUR = 60;
/** ASHRAE counts people on 100 m2 of floor. */
const FLOOR_M2 = 100;
const REMOVED = { remove90: 0.9, remove99: 0.99, remove999: 0.999 } as const;

const fields = {
  airChanges: mayAsk('changes', 0, 200),
  volume: mayAsk('volume', 1, 100_000),
  flow: mayAsk('flow', 0, 1_000_000),
  floorRate: mayAsk('floorRate', 0, 100),
  height: mayAsk('length', 1, 50),
  halfLife: mayAsk('time', 0.1, 10_080),
  personRate: mayAsk('personRate', 0, 1000),
  crowd: mayAsk('crowd', 0.1, 1000),
  mixing: mayAsk('mixing', 1, 10),
} satisfies Fields;
type Asked = Values<typeof fields>;

/** Air changes an hour by each way that enough is known for. */
const waysOf = ({ airChanges, volume, flow, floorRate, height, halfLife }: Asked) => ({
  said: airChanges?.base,
  byFlow: flow && volume && changesByFlow(flow.base, volume.base),
  byFloor: floorRate && height && changesByFloor(floorRate.base, height.base),
  byHalfLife: halfLife && flowFromHalfLife(1, halfLife.base / MIN_IN_HOUR),
});

const perPersonOf = ({ personRate, floorRate, crowd }: Asked): number | undefined =>
  personRate &&
  floorRate &&
  crowd &&
  airPerPerson({
    personRate: personRate.base,
    floorRate: floorRate.base,
    peoplePerFloor: crowd.base / FLOOR_M2,
  });

/** Air changes of a room, by what is known of it, and how long they take to clear it. */
export const airChanges = aSum({
  id: 'air-changes',
  fields,
  lists: {},
  answers: {
    counted: 'changes',
    byFlow: 'changes',
    byFloor: 'changes',
    byHalfLife: 'changes',
    halfLifeFlow: 'flow',
    perPerson: 'personRate',
    remove90: 'minutes',
    remove99: 'minutes',
    remove999: 'minutes',
  },
  rowAnswers: {},
  sources: [
    'cdc-air-changes-2003',
    'mmwr-43-rr-13',
    'ashrae-62-1-2016',
    'mechanical-code-2018',
    'tracer-gas-column',
  ],
  wrong: (asked) =>
    [...Object.values(waysOf(asked)), perPersonOf(asked)].every((way) => way === undefined)
      ? [{ path: '/airChangesPerHour', accepts: 'sums.wrong.noWay' }]
      : [],
  work: (asked) => {
    const { byFlow, byFloor, byHalfLife, said } = waysOf(asked);
    const known = [said, byFlow, byFloor, byHalfLife].filter((way) => way !== undefined);
    // Where several ways are known the slowest one counts.
    const counted = known.length === 0 ? undefined : Math.min(...known);
    const mixingFactor = asked.mixing?.base ?? 1;
    const minutes = Object.entries(REMOVED).map(([name, share]) => [
      name,
      counted === undefined
        ? undefined
        : orNever(minutesToRemove(share, { changesPerHour: counted, mixingFactor })),
    ]);
    const { volume } = asked;
    return {
      figures: {
        counted,
        byFlow,
        byFloor,
        byHalfLife,
        halfLifeFlow: byHalfLife && volume && byHalfLife * volume.base,
        perPerson: perPersonOf(asked),
        ...(Object.fromEntries(minutes) as Readonly<Record<string, number | null | undefined>>),
      },
    };
  },
});
