import { sure } from '../book/sure.js';
import { expOver2, expOver3 } from './exponentials.js';
import type { Zones } from './zones.js';

/** Vapour let out at the bench: steady, or dying away from its beginning on. Minutes and milligrams. */
export interface Source {
  readonly fromMin: number;
  /** `Infinity`: never shut off. */
  readonly toMin: number;
  /** Milligrams a minute at the beginning. */
  readonly mgMin: number;
  /** What goes of the rate in a minute; 0 is steady. */
  readonly fadePerMin: number;
}

/** What a substance does in the air of a room that was clean at first, at any time whatever. */
export interface Track {
  /** Times when a source begins or ends, sorted. */
  readonly breaks: readonly number[];
  /** mg/m3 at the bench, and in the rest of the room. */
  readonly near: (min: number) => number;
  readonly far: (min: number) => number;
  /** Change of the level at the bench, mg/m3 a minute; just after `min` where it jumps. */
  readonly nearSlope: (min: number) => number;
  /** mg/m3 times minutes, from the beginning on. */
  readonly nearSum: (min: number) => number;
  readonly farSum: (min: number) => number;
}

/**
 * A stretch between two breaks, in which every level is a sum of exponentials: what was there wears
 * off at the rates of the room, and each source adds a term of its own.
 */
interface Stretch {
  readonly from: number;
  readonly terms: readonly Term[];
  /** Terms of sources that fade about as quickly as the room clears: a quotient would be 0 / 0. */
  readonly meeting: readonly Meeting[];
  readonly nearSum: number;
  readonly farSum: number;
}

/** `near e^(rate t)` at the bench and `far e^(rate t)` in the room. */
interface Term {
  readonly rate: number;
  readonly near: number;
  readonly far: number;
}

/** The same times the divided difference of two rates that (all but) meet. */
interface Meeting extends Term {
  readonly other: number;
}

/** Rates that differ by less than this a minute are taken as meeting. */
const MEETS = 1e-4;

type Place = 'near' | 'far';

/** Solves the room for these sources: exact at every time, whatever overlaps. */
export const makeTrack = (zones: Zones, sources: readonly Source[]): Track => {
  const stretches = stretchesOf(zones, sources);
  const breaks = stretches.map((stretch) => stretch.from);
  let last = 0;
  const stretchAt = (min: number): Stretch | undefined => {
    // Asked in order mostly: look where the last one was found first.
    if (last >= breaks.length || min < sure(breaks[last])) last = 0;
    while (last + 1 < breaks.length && sure(breaks[last + 1]) <= min) last += 1;
    const found = stretches[last];
    return found === undefined || min < found.from ? undefined : found;
  };
  const within =
    (each: (stretch: Stretch, place: Place, minutes: number) => number, place: Place) =>
    (min: number): number => {
      const stretch = stretchAt(min);
      return stretch === undefined ? 0 : each(stretch, place, min - stretch.from);
    };
  return {
    breaks,
    near: within(levelAfter, 'near'),
    far: within(levelAfter, 'far'),
    nearSlope: within(slopeAfter, 'near'),
    nearSum: within(sumAfter, 'near'),
    farSum: within(sumAfter, 'far'),
  };
};

const levelAfter = ({ terms, meeting }: Stretch, place: Place, minutes: number): number => {
  let level = 0;
  for (const term of terms) level += term[place] * Math.exp(term.rate * minutes);
  for (const both of meeting) {
    level += both[place] * minutes * expOver2(both.rate * minutes, both.other * minutes);
  }
  return level;
};

const slopeAfter = ({ terms, meeting }: Stretch, place: Place, minutes: number): number => {
  let slope = 0;
  for (const term of terms) slope += term[place] * term.rate * Math.exp(term.rate * minutes);
  for (const both of meeting) {
    const [x, y] = [both.rate * minutes, both.other * minutes];
    slope += both[place] * (Math.exp(y) + x * expOver2(x, y));
  }
  return slope;
};

const sumAfter = (stretch: Stretch, place: Place, minutes: number): number => {
  let sum = place === 'near' ? stretch.nearSum : stretch.farSum;
  for (const term of stretch.terms) {
    sum += term[place] * (term.rate === 0 ? minutes : Math.expm1(term.rate * minutes) / term.rate);
  }
  for (const both of stretch.meeting) {
    sum += both[place] * minutes ** 2 * expOver3(both.rate * minutes, both.other * minutes, 0);
  }
  return sum;
};

const stretchesOf = (zones: Zones, sources: readonly Source[]): readonly Stretch[] => {
  const live = sources.filter(({ fromMin, toMin, mgMin }) => mgMin > 0 && toMin > fromMin);
  const times = live.flatMap(({ fromMin, toMin }) => [fromMin, toMin]);
  const breaks = [...new Set(times)].filter(Number.isFinite).sort((a, b) => a - b);
  const waiting = [...live].sort((a, b) => b.fromMin - a.fromMin);
  const found: Stretch[] = [];
  let on: readonly Source[] = [];
  for (const from of breaks) {
    const before = found.at(-1);
    const minutes = from - (before?.from ?? from);
    const reached = (of: typeof levelAfter, place: Place): number =>
      before === undefined ? 0 : of(before, place, minutes);
    const begun: Source[] = [];
    while (waiting.length > 0 && sure(waiting.at(-1)).fromMin <= from) {
      begun.push(sure(waiting.pop()));
    }
    on = onAt([...on, ...begun], from);
    found.push({
      from,
      ...termsOf(zones, reached(levelAfter, 'near'), reached(levelAfter, 'far'), on),
      nearSum: reached(sumAfter, 'near'),
      farSum: reached(sumAfter, 'far'),
    });
  }
  return found;
};

/** Of these sources, those still on just after a time, as from then on; what ends and fades alike is one. */
const onAt = (sources: readonly Source[], at: number): readonly Source[] => {
  const found: { fromMin: number; toMin: number; mgMin: number; fadePerMin: number }[] = [];
  for (const { fromMin, toMin, mgMin, fadePerMin } of sources) {
    if (toMin <= at) continue;
    const left = fadePerMin === 0 ? mgMin : mgMin * Math.exp(-fadePerMin * (at - fromMin));
    const like = found.find((each) => each.toMin === toMin && each.fadePerMin === fadePerMin);
    if (like === undefined) found.push({ fromMin: at, toMin, mgMin: left, fadePerMin });
    else like.mgMin += left;
  }
  return found;
};

/** Levels at the beginning of a stretch and the sources that are on, as terms. */
const termsOf = (
  zones: Zones,
  near: number,
  far: number,
  sources: readonly Source[],
): Pick<Stretch, 'terms' | 'meeting'> => {
  const amounts = modesOf(zones, near, far);
  const meeting: Meeting[] = [];
  const fading = sources.map(({ fadePerMin }) => ({ rate: -fadePerMin, near: 0, far: 0 }));
  const wearing = zones.modes.map(({ rate, gain, far: share }, mode) => {
    let amount = sure(amounts[mode]);
    sources.forEach(({ fadePerMin: fade, mgMin }, index) => {
      const added = gain * mgMin;
      const apart = rate + fade;
      if (Math.abs(apart) < MEETS) {
        meeting.push({ rate, other: -fade, near: added, far: added * share });
        return;
      }
      const own = sure(fading[index]);
      amount += added / apart;
      own.near -= added / apart;
      own.far -= (added / apart) * share;
    });
    return { rate, near: amount, far: amount * share };
  });
  return { terms: [...wearing, ...fading], meeting };
};

/** Levels near and far as amounts of the modes. */
const modesOf = ({ modes }: Zones, near: number, far: number): readonly number[] => {
  const [slow, quick] = modes;
  if (slow === undefined || quick === undefined) return [near];
  const ofQuick = (far - slow.far * near) / (quick.far - slow.far);
  return [near - ofQuick, ofQuick];
};

/** mg/m3 at the bench and in the room at one time. */
export const concentration = (
  zones: Zones,
  sources: readonly Source[],
  atMin: number,
): { readonly nearMgM3: number; readonly farMgM3: number } => {
  const track = makeTrack(zones, sources);
  return { nearMgM3: track.near(atMin), farMgM3: track.far(atMin) };
};

/** Mean mg/m3 at the bench and in the room from one time to another. */
export const meanConcentration = (
  zones: Zones,
  sources: readonly Source[],
  fromMin: number,
  toMin: number,
): { readonly nearMgM3: number; readonly farMgM3: number } => {
  const track = makeTrack(zones, sources);
  const mean = (sum: (min: number) => number): number =>
    (sum(toMin) - sum(fromMin)) / (toMin - fromMin);
  return { nearMgM3: mean(track.nearSum), farMgM3: mean(track.farSum) };
};
