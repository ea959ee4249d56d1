import { expect } from 'vitest';
import { z } from 'zod';
import type { BenchInput, Route, ScaleId, Sheet } from '../../server/reasoning/index.js';
import { catalogue, words } from './rules.js';

/* What a case in YAML says: a bench, and what any good sheet for it says and never says. */

const Figure = z.number().positive();

/** A bench as `POST /api/sheet` takes it. */
export const Given: z.ZodType<BenchInput> = z.strictObject({
  region: z.string().optional(),
  mixes: z.array(
    z.strictObject({
      name: z.string().optional(),
      parts: z.array(z.strictObject({ ink: z.string(), share: Figure.optional() })),
      additives: z
        .array(z.strictObject({ additive: z.string(), percent: Figure.optional() }))
        .optional(),
      dried: z.boolean().optional(),
      on: z.array(z.string()).optional(),
    }),
  ),
  surfaces: z.array(z.string()),
  equipment: z.array(z.string()).optional(),
  agentsAtHand: z.array(z.string()).optional(),
  uses: z.array(z.strictObject({ agent: z.string(), ml: Figure })).optional(),
  room: z.strictObject({ volumeM3: Figure.optional(), air: z.string().optional() }).optional(),
  people: z
    .strictObject({
      count: Figure.optional(),
      under16: z.boolean().optional(),
      flags: z.array(z.string()).optional(),
    })
    .optional(),
});

const Ids = z.array(z.string());
const Words = z.string().transform((words) => new RegExp(words, 'i'));
const Span = z.strictObject({ low: z.number(), high: z.number() });

const Caution = z.strictObject({
  caution: z.string(),
  line: z.string().optional(),
  words: Words.optional(),
});

const Wrong = z.strictObject({
  wrong: z.string(),
  /** None of these agents ... */
  agents: Ids.optional(),
  /** ... on these surfaces (all, when none is named) ... */
  on: Ids.optional(),
  /** ... before any other agent; else at no point. */
  first: z.literal(true).optional(),
  stream: z.string().optional(),
  words: Words.optional(),
});

export const Then = z.strictObject({
  /** The agents of the plan, all of them; `orAgents`: other sets that would do as well. */
  agents: Ids.optional(),
  orAgents: z.array(Ids).optional(),
  routes: z.array(z.strictObject({ on: z.string(), passes: Ids })).optional(),
  stuck: z.array(z.strictObject({ on: z.string(), why: z.string() })).optional(),
  /** At least this much air, and no more than one step above unless `atMost` says why. */
  air: z
    .strictObject({
      atLeast: z.string(),
      atMost: z.string().optional(),
      because: z.string().optional(),
    })
    .refine(({ atMost, because }) => (atMost === undefined) === (because === undefined), {
      error: 'atMost and because go together',
    })
    .optional(),
  /** At least, and at most, these levels on other scales. */
  levels: z
    .record(z.string(), z.strictObject({ atLeast: z.string(), atMost: z.string().optional() }))
    .optional(),
  /** Each of these rag streams, or a stricter one. */
  rags: Ids.optional(),
  selfHeating: z.boolean().optional(),
  gloves: Ids.optional(),
  /** Amounts that the sheet's ranges must overlap. */
  ml: z.record(z.string(), Span).optional(),
  ragCount: Span.optional(),
  doses: z.enum(['usual', 'above-usual', 'above-highest']).optional(),
  unknown: Ids.optional(),
  /** Numbers to call that stand on the sheet, as people read them. */
  numbers: Ids.optional(),
  says: z.array(Caution).optional(),
  never: z.array(Wrong).optional(),
});
export type Then = z.infer<typeof Then>;

/** One thing to look for on a sheet, named as a sentence. */
export interface Look {
  readonly name: string;
  readonly at: (sheet: Sheet) => void;
}

/** All that a case asks of its sheet, one look each. */
export function looksOf(then: Then): readonly Look[] {
  const { agents, air, levels = {}, rags = [], ml = {}, ragCount, doses } = then;
  return [
    knowsAll(then.unknown ?? []),
    ...(agents === undefined ? [] : [takes([agents, ...(then.orAgents ?? [])])]),
    ...(then.routes ?? []).map(goes),
    ...(then.stuck ?? []).map(sticks),
    ...(air === undefined ? [] : [airs(air)]),
    ...Object.entries(levels).map(([scale, span]) => reaches(scale as ScaleId, span)),
    ...rags.map(sorts),
    ...(then.selfHeating === undefined ? [] : [heats(then.selfHeating)]),
    ...(then.gloves ?? []).map(wears),
    ...Object.entries(ml).map(([agent, span]) => pours(agent, span)),
    ...(ragCount === undefined ? [] : [counts(ragCount)]),
    ...(doses === undefined ? [] : [doses === 'usual' ? flags() : flags(`dose-${doses}`)]),
    ...(then.numbers ?? []).map(calls),
    ...(then.says ?? []).map(says),
    ...(then.never ?? []).map(never),
  ];
}

const agentName = (id: string): string => words.short('agent', id).toLowerCase();
const surfaceName = (id: string): string => words.short('surface', id).toLowerCase();

const listed = (ids: readonly string[]): string =>
  ids.length === 0 ? 'nothing' : ids.map(agentName).join(', ');

/** A case that misspells an id would otherwise be about an unknown thing. */
const knowsAll = (unknown: readonly string[]): Look => ({
  name:
    unknown.length === 0 ? 'knows all that is on the bench' : `does not know ${listed(unknown)}`,
  at: (sheet) => {
    expect(sheet.unknown.map((each) => each.id)).toEqual(unknown);
  },
});

const takes = (sets: readonly (readonly string[])[]): Look => ({
  name: `takes ${sets.map(listed).join(', or ')}`,
  at: (sheet) => {
    expect(sets.map((set) => set.toSorted())).toContainEqual(sheet.plan.agents.toSorted());
  },
});

const routesOn = (sheet: Sheet, surface: string): readonly Route[] => {
  const routes = sheet.plan.routes.filter((route) => route.surface === surface);
  expect(routes, `routes for ${surface}`).not.toEqual([]);
  return routes;
};

const goes = ({ on, passes }: { on: string; passes: readonly string[] }): Look => ({
  name: `does the ${surfaceName(on)}: ${listed(passes)}`,
  at: (sheet) => {
    for (const route of routesOn(sheet, on)) {
      expect(route.passes.map((pass) => pass.agent ?? pass.do)).toEqual(passes);
    }
  },
});

const sticks = ({ on, why }: { on: string; why: string }): Look => ({
  name: `says stop for the ${surfaceName(on)}: ${why}`,
  at: (sheet) => {
    for (const route of routesOn(sheet, on)) expect(route.stuck).toBe(why);
  },
});

const levelsOf = (scale: ScaleId): readonly string[] =>
  (catalogue.scales.find((row) => row.id === scale)?.levels ?? []).map((level) => level.id);

/** Place of a level on its scale; fails when the scale has no such level. */
const heightOf = (scale: ScaleId, level: string): number => {
  expect(levelsOf(scale)).toContain(level);
  return levelsOf(scale).indexOf(level);
};

const reached = (sheet: Sheet, scale: ScaleId): number =>
  sheet.levels.find((level) => level.scale === scale)?.height ?? -1;

interface Levels {
  readonly atLeast: string;
  readonly atMost?: string | undefined;
}

const airs = ({ atLeast, atMost }: Levels): Look => {
  const oneUp = levelsOf('air')[levelsOf('air').indexOf(atLeast) + 1];
  return reaches('air', { atLeast, atMost: atMost ?? oneUp });
};

const reaches = (scale: ScaleId, { atLeast, atMost }: Levels): Look => ({
  name: `asks for ${scale}: ${atLeast}${atMost === undefined ? '' : `, at most ${atMost}`}`,
  at: (sheet) => {
    expect(reached(sheet, scale)).toBeGreaterThanOrEqual(heightOf(scale, atLeast));
    if (atMost === undefined) return;
    expect(reached(sheet, scale)).toBeLessThanOrEqual(heightOf(scale, atMost));
  },
});

const sorts = (stream: string): Look => ({
  name: `sends rags to ${stream}, or stricter`,
  at: (sheet) => {
    const row = catalogue.streams.find((each) => each.id === stream);
    const wanted = heightOf('rags', row?.level ?? stream);
    const met = sheet.streams.filter(
      (each) => each.id === stream || heightOf('rags', each.level) > wanted,
    );
    expect(met).not.toEqual([]);
  },
});

const heats = (selfHeating: boolean): Look => ({
  name: selfHeating ? 'says that rags heat by themselves' : 'knows no rags that heat',
  at: (sheet) => {
    expect(sheet.streams.some((stream) => stream.selfHeating)).toBe(selfHeating);
  },
});

const wears = (material: string): Look => ({
  name: `names ${material} gloves`,
  at: (sheet) => {
    expect(sheet.gloves.materials.map((each) => each.id)).toContain(material);
  },
});

const overlap = (
  found: { low: number; high: number } | undefined,
  span: { low: number; high: number },
): void => {
  expect(found).toBeDefined();
  expect(found?.low).toBeLessThanOrEqual(span.high);
  expect(found?.high).toBeGreaterThanOrEqual(span.low);
};

const pours = (agent: string, span: { low: number; high: number }): Look => ({
  name: `pours about ${span.low} to ${span.high} ml of ${agentName(agent)}`,
  at: (sheet) => {
    overlap(sheet.amounts.ml.find((each) => each.agent === agent)?.range, span);
  },
});

const counts = (span: { low: number; high: number }): Look => ({
  name: `counts about ${span.low} to ${span.high} rags`,
  at: (sheet) => {
    overlap(sheet.amounts.rags, span);
  },
});

const flags = (kind?: string): Look => ({
  name: kind === undefined ? 'finds every dose usual' : `flags a ${kind}`,
  at: (sheet) => {
    expect(sheet.flags.map((flag) => flag.kind)).toEqual(kind === undefined ? [] : [kind]);
  },
});

interface Said {
  readonly id: string;
  readonly text: string;
  readonly words: string;
}

/** All lines as people read them. */
const saidOn = (sheet: Sheet): readonly Said[] =>
  sheet.lines.map((line) => {
    const { head, rest } = words.line(line, sheet.bench.region);
    return { id: line.id, text: line.text, words: `${head} ${rest}` };
  });

const calls = (number: string): Look => ({
  name: `lists the number ${number}`,
  at: (sheet) => {
    const { numbers, poison } = words.emergency(sheet.bench.region);
    expect([...numbers, ...poison].map((each) => each.number)).toContain(number);
  },
});

const says = ({ caution, line, words: pattern }: z.infer<typeof Caution>): Look => ({
  name: `says: ${caution}`,
  at: (sheet) => {
    expect(line ?? pattern, 'a line or words to look for').toBeDefined();
    const met = saidOn(sheet).filter(
      (said) =>
        (line === undefined || said.id === line || said.text === line) &&
        (pattern === undefined || pattern.test(said.words)),
    );
    expect(met).not.toEqual([]);
  },
});

const never = (wrong: z.infer<typeof Wrong>): Look => ({
  name: `never: ${wrong.wrong}`,
  at: (sheet) => {
    const { agents, on, first, stream, words: pattern } = wrong;
    expect(agents ?? stream ?? pattern, 'something to look for').toBeDefined();
    const routes = (on ?? [undefined]).flatMap((surface) =>
      surface === undefined ? sheet.plan.routes : routesOn(sheet, surface),
    );
    const used = routes.flatMap((route) => {
      const inOrder = route.passes.flatMap((pass) => pass.agent ?? []);
      return first === true ? inOrder.slice(0, 1) : inOrder;
    });
    expect(used.filter((agent) => agents?.includes(agent))).toEqual([]);
    expect(sheet.streams.filter((each) => each.id === stream)).toEqual([]);
    expect(saidOn(sheet).filter((said) => pattern?.test(said.words))).toEqual([]);
  },
});
