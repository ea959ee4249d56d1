/** Finding where a function crosses nought, between a time where it is above and one where it is not. */

const MOST_STEPS = 200;
const CLOSE = 1e-12;
const LEAP = 4;

/**
 * Where `f` goes from above nought to nought or below, between `above` and `below` (either may be
 * the larger). Illinois method: never leaves the bracket, exact to about 12 digits of x
 * or of what it falls by.
 */
export const crossing = (f: (x: number) => number, above: number, below: number): number => {
  let [a, b] = [above, below];
  let [fa, fb] = [f(a), f(b)];
  const scale = Math.abs(fa) + Math.abs(fb);
  if (fb === 0) return b;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    if (Math.abs(b - a) <= CLOSE * Math.max(Math.abs(a), Math.abs(b))) break;
    const guess = b - (fb * (b - a)) / (fb - fa);
    // A guess that does not move, or a slow bracket, is halved.
    const inside = guess > Math.min(a, b) && guess < Math.max(a, b);
    const x = inside && step % 8 !== 7 ? guess : (a + b) / 2;
    const fx = f(x);
    if (Math.abs(fx) <= CLOSE * scale) return x;
    if (fx > 0 === fb > 0) fa /= 2;
    else [a, fa] = [b, fb];
    [b, fb] = [x, fx];
  }
  return b;
};

/**
 * Where a function that never rises comes down to a level, from a positive guess on; 0 when it is
 * there at 0 already, undefined when it is still above at `most`. Searched in 1/x, in which what
 * air does to vapour is nearly straight.
 */
export const comesDownTo = (
  f: (x: number) => number,
  level: number,
  guess: number,
  most: number,
): number | undefined => {
  let low = Math.min(guess, most);
  let high = low;
  if (f(low) > level) {
    do {
      if (high >= most) return undefined;
      low = high;
      high = Math.min(most, high * LEAP);
    } while (f(high) > level);
  } else {
    if (f(0) <= level) return 0;
    do {
      high = low;
      low /= LEAP;
    } while (f(low) <= level);
  }
  return 1 / crossing((inverse) => f(1 / inverse) - level, 1 / low, 1 / high);
};
