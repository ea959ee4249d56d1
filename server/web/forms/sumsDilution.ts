import {
  airForMeasure,
  fireFlow,
  healthFlow,
  heatFactor,
  hotFlow,
  ML_IN_US_PINT,
  roomPpm,
  summedFlow,
  vapourCfm,
  vapourM3PerHour,
} from '../../reasoning/index.js';
import { bothLevels, molarVolumeOf, ppmOf } from './sumsConvert.js';
import { asks, mayAsk, type Values } from './sumsFields.js';
import { aSum } from './sumsSum.js';

/** A quarter of the lower flammable limit: the usual safety factor of 4. */
const SHARE_OF_LEL_PERCENT = 25;
const PERCENT = 100;
const ML_IN_L = 1000;
const MIN_IN_HOUR = 60;

const part = {
  liquid: asks('liquidRate', 0, 1_000_000),
  density: asks('liquidDensity', 0.3, 3),
  molarMass: asks('molarMass', 2, 1000),
  limit: asks('level', 0.001, 1_000_000),
  lel: mayAsk('percent', 0.1, 100),
};

interface Room {
  readonly mixingFactor: number;
  readonly molarVolumeLMol: number;
  readonly shareOfLel: number;
  /** Of air at this temperature; 1 where it is not heated. */
  readonly heatFactor: number;
}

const partOf = ({ liquid, density, molarMass, limit, lel }: Values<typeof part>, room: Room) => {
  const { mixingFactor, molarVolumeLMol, shareOfLel } = room;
  const [densityKgL, molarMassGMol] = [density.base, molarMass.base];
  const made = { densityKgL, molarMassGMol, molarVolumeLMol };
  const vapour = vapourM3PerHour({ mlPerHour: liquid.base, ...made });
  const limitPpm = ppmOf(limit, molarMassGMol, molarVolumeLMol);
  const usVapour = vapourCfm({
    pintsPerMin: liquid.base / ML_IN_US_PINT / MIN_IN_HOUR,
    specificGravity: densityKgL,
    molarMassGMol,
  });
  return {
    vapour,
    molarMassGMol,
    health: healthFlow(vapour, { limitPpm, mixingFactor }),
    usForm: healthFlow(usVapour, { limitPpm, mixingFactor }),
    fire:
      lel && fireFlow(vapour, { lelPercent: lel.base, shareOfLel, heatFactor: room.heatFactor }),
    airPerLitre:
      lel &&
      airForMeasure(vapourM3PerHour({ mlPerHour: ML_IN_L, ...made }), {
        lelPercent: lel.base,
        safetyFactor: 1 / shareOfLel,
      }),
  };
};

/** Air that thins the vapour of liquids in use to their limits, and to a share of where it burns. */
export const dilution = aSum({
  id: 'dilution',
  fields: {
    mixing: asks('mixing', 1, 10),
    flow: mayAsk('flow', 0, 1_000_000),
    temperature: mayAsk('temperature', -20, 60),
    shareOfLel: mayAsk('percent', 1, 100),
    heated: mayAsk('temperature', 0, 400),
  },
  lists: { parts: { fields: part, most: 10, shown: 2, isOptional: false } },
  answers: {
    needed: 'flow',
    health: 'flow',
    wellMixed: 'flow',
    usForm: 'cfm',
    sumOfFractions: 'plain',
    fire: 'flow',
    fireHot: 'flow',
    vapour: 'flow',
    molarVolume: 'molarVolume',
  },
  rowAnswers: { parts: { vapour: 'flow', health: 'flow', level: 'level', airPerLitre: 'volume' } },
  sources: ['acgih-ventilation', 'process-safety-textbook', 'osha-1910-94', 'mixing-primer'],
  wrong: () => [],
  work: ({ mixing, flow, temperature, shareOfLel, heated }, { parts }) => {
    const mixingFactor = mixing.base;
    const molarVolumeLMol = molarVolumeOf(temperature);
    const room = {
      mixingFactor,
      molarVolumeLMol,
      shareOfLel: (shareOfLel?.base ?? SHARE_OF_LEL_PERCENT) / PERCENT,
      heatFactor: heated ? heatFactor(heated.base) : 1,
    };
    const found = parts.map((each) => partOf(each, room));
    // No limit can be 0 here, so no flow is endless; an unknown one burns at an unknown share.
    const health = summedFlow(found.map((each) => each.health));
    const fire = summedFlow(found.map((each) => each.fire));
    const fireHot = heated && fire && hotFlow(fire, heated.base);
    return {
      figures: {
        needed: health && Math.max(health, fire ?? 0, fireHot ?? 0),
        health,
        wellMixed: health && health / mixingFactor,
        usForm: summedFlow(found.map((each) => each.usForm)),
        sumOfFractions: flow && (flow.base > 0 ? (health ?? 0) / flow.base : null),
        fire,
        fireHot,
        vapour: found.reduce((sum, { vapour }) => sum + vapour, 0),
        molarVolume: molarVolumeLMol,
      },
      rows: {
        parts: found.map(({ vapour, health: own, molarMassGMol, airPerLitre }) => ({
          vapour,
          health: own,
          level:
            flow &&
            bothLevels(
              roomPpm(vapour, { flow: flow.base, mixingFactor }),
              molarMassGMol,
              molarVolumeLMol,
            ),
          airPerLitre,
        })),
      },
    };
  },
});
