/**
 * Divided differences of the exponential function. Every concentration of the room model is made of
 * them; written so, nothing is singular where two rates meet or where a room has no air at all.
 */

/** Above this spread of exponents the plain quotient loses no digits that matter. */
const SPREAD = 0.5;
const TERMS = 20;

/** exp[x, y] = (e^x - e^y) / (x - y), and e^x where they meet. */
export const expOver2 = (x: number, y: number): number => {
  const gap = Math.abs(x - y);
  return gap === 0 ? Math.exp(x) : (-Math.exp(Math.max(x, y)) * Math.expm1(-gap)) / gap;
};

/** exp[x, y, z], the second divided difference, whatever the order of the three. */
export const expOver3 = (x: number, y: number, z: number): number => {
  const low = Math.min(x, y, z);
  const high = Math.max(x, y, z);
  const middle = x + y + z - low - high;
  return high - low > SPREAD
    ? (expOver2(high, middle) - expOver2(middle, low)) / (high - low)
    : Math.exp(middle) * seriesOver3(low - middle, high - middle);
};

/** exp[a, 0, b] by its series: the sum of the complete homogeneous polynomials over (k + 2)!. */
const seriesOver3 = (a: number, b: number): number => {
  let homogeneous = 1;
  let power = 1;
  let factorial = 2;
  let sum = homogeneous / factorial;
  for (let k = 1; k < TERMS; k += 1) {
    power *= b;
    homogeneous = a * homogeneous + power;
    factorial *= k + 2;
    sum += homogeneous / factorial;
  }
  return sum;
};
