import type { Range } from '../../reasoning/index.js';

/** How much of each thing one bench holds. The address, the form and the JSON body share these. */
export const MOST = {
  mixes: 8,
  parts: 12,
  additives: 12,
  surfaces: 40,
  equipment: 20,
  agentsAtHand: 40,
  uses: 20,
  airUses: 20,
  flags: 20,
  bottles: 40,
  hazardCodes: 40,
  letters: 60,
  addressLetters: 4000,
} as const;

/** Least and most of each number that can be typed, in the unit its name says. */
export const NUMBERS = {
  share: { low: 0, high: 100 },
  percent: { low: 0, high: 100 },
  ml: { low: 0, high: 20_000 },
  volumeM3: { low: 1, high: 100_000 },
  lengthM: { low: 0.5, high: 200 },
  widthM: { low: 0.5, high: 200 },
  heightM: { low: 1, high: 50 },
  airChangesPerHour: { low: 0, high: 200 },
  fanM3PerHour: { low: 0, high: 1_000_000 },
  mixingFactor: { low: 1, high: 10 },
  temperatureC: { low: -20, high: 60 },
  airMl: { low: 0, high: 10_000_000 },
  startMin: { low: 0, high: 1440 },
  minutes: { low: 0.1, high: 1440 },
  evaporates: { low: 0, high: 1 },
  evaporatesPercent: { low: 0, high: 100 },
  horizonMin: { low: 1, high: 2880 },
  shiftHours: { low: 1, high: 20 },
  count: { low: 1, high: 500 },
} as const satisfies Record<string, Range>;
export type NumberName = keyof typeof NUMBERS;

/** No liquid on a bench is colder or hotter than this, degrees Celsius. */
export const COLDEST_C = -150;
export const HOTTEST_C = 1000;

/** The shares of a mix may miss 100 by this much, for rounding. */
export const SHARE_SLACK = 0.5;

const number = (name: NumberName, unit: string): string =>
  `a number from ${NUMBERS[name].low} to ${NUMBERS[name].high.toLocaleString('en-GB')}${unit}`;

/** What is accepted, in plain words: the one list that form, address and JSON answer with. */
export const ACCEPTS = {
  share: number('share', ', in percent of the mix'),
  percent: number('percent', ', in percent of the mix'),
  ml: number('ml', ' ml'),
  volumeM3: number('volumeM3', ' cubic metres'),
  lengthM: number('lengthM', ' metres'),
  widthM: number('widthM', ' metres'),
  heightM: number('heightM', ' metres'),
  airChangesPerHour: number('airChangesPerHour', ' air changes an hour'),
  fanM3PerHour: number('fanM3PerHour', ' cubic metres an hour'),
  mixingFactor: number('mixingFactor', ''),
  temperatureC: number('temperatureC', ' degrees Celsius'),
  airMl: number('airMl', ' ml'),
  startMin: number('startMin', ' minutes after the beginning'),
  minutes: number('minutes', ' minutes'),
  evaporates: number('evaporates', ', as a share of the liquid'),
  evaporatesPercent: number('evaporatesPercent', ', in percent of the liquid'),
  horizonMin: number('horizonMin', ' minutes'),
  shiftHours: number('shiftHours', ' hours'),
  count: `a whole number of people, ${NUMBERS.count.low} to ${NUMBERS.count.high}`,
  sumWhole: 'shares that add up to 100',
  sumPart: 'shares that add up to no more than 100',
  ink: 'the name of an ink, up to 60 letters',
  additive: 'the name of an additive, up to 60 letters',
  anyInk: 'at least one ink',
  name: 'words of up to 60 letters',
  mixes: `up to ${MOST.mixes} mixes`,
  parts: `up to ${MOST.parts} inks in one mix`,
  additives: `up to ${MOST.additives} additives in one mix`,
  surfaces: `up to ${MOST.surfaces} surfaces`,
  equipment: `up to ${MOST.equipment} pieces of equipment`,
  agentsAtHand: `up to ${MOST.agentsAtHand} things at hand`,
  uses: `up to ${MOST.uses} uses`,
  flags: `up to ${MOST.flags} notes about people`,
  address: `an address of up to ${MOST.addressLetters.toLocaleString('en-GB')} letters; take something off the bench`,
  roomSides: 'length, width and height, all three',
  roomSize: 'the size of the room: its volume, or length, width and height',
  liquid: 'the name of an agent or of a substance, up to 60 letters',
  oneLiquid: 'an agent or a substance, one of the two',
  airUses: `up to ${MOST.airUses} uses`,
  zones: '1 or 2',
  airAddress: `an address of up to ${MOST.addressLetters.toLocaleString('en-GB')} letters; say fewer uses`,
  yesNo: 'yes, no, or how many',
} as const;
