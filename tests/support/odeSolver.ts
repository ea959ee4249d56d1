import { createRequire } from 'node:module';

/** A general solver of ordinary differential equations, as far as it is used here. */
interface Solver {
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  solve: (
    slopes: (x: number, y: readonly number[]) => number[],
    from: number,
    y: number[],
    to: number,
  ) => { readonly y: number[] };
}

// The package ships TypeScript sources that do not pass our settings, so its types are named here.
const require = createRequire(import.meta.url);
const { Solver } = require('odex') as {
  readonly Solver: new (size: number) => Solver;
};

/** Runs a system from one time to another; the slopes must be smooth in between. */
export const runOde = (
  slopes: (x: number, y: readonly number[]) => number[],
  from: number,
  y: readonly number[],
  to: number,
): number[] => {
  if (to <= from) return [...y];
  const solver = new Solver(y.length);
  solver.relativeTolerance = 1e-11;
  solver.absoluteTolerance = 1e-13;
  solver.maxSteps = 100_000;
  return solver.solve(slopes, from, [...y], to).y;
};
