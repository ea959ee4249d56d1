import type { Pass, Plan, Route } from '../types.js';
import type { Book } from '../book/book.js';
import { compare } from '../book/compare.js';
import { sure } from '../book/sure.js';
import type { Candidate } from '../routes/candidate.js';
import type { Task } from '../routes/candidates.js';
import type { Assessment } from './assess.js';

/** The plan in ids: agents taken, and the route of every mix on every surface, in working order. */
export const planOf = (book: Book, assessed: Assessment): Plan => {
  const whenStuck = stuckRules(assessed);
  return {
    agents: agentIds(book, assessed.plan.agents),
    routes: assessed.tasks
      .map((task, index) => routeOf(book, task, assessed.choices[index], whenStuck))
      .sort(
        (a, b) =>
          turnOf(book, a) - turnOf(book, b) ||
          compare(a.surface, b.surface) ||
          stageOf(book, a) - stageOf(book, b) ||
          compare(a.mix, b.mix),
      ),
    hazard: assessed.plan.hazard,
    chosenFrom: assessed.plan.chosenFrom.toString(),
  };
};

/** Rules that hold because something is stuck. */
const stuckRules = ({ held }: Assessment): readonly string[] =>
  held.rules.filter(({ rule }) => rule.when.includes('state.stuck')).map(({ rule }) => rule.id);

const LAST = 1000;

const turnOf = (book: Book, route: Route): number =>
  book.surfaces.get(route.surface)?.surface.turn ?? LAST;

/** Stage of a route's first agent: on one surface the oil route goes before the soap route. */
const stageOf = (book: Book, route: Route): number => {
  const first = route.passes.find((pass) => pass.agent !== undefined)?.agent ?? '';
  return book.agents[book.agentIndex.get(first) ?? -1]?.stage ?? 0;
};

/** Ids of a set of agents in working order: oil before spirit before soap. */
const agentIds = (book: Book, set: number): readonly string[] =>
  book.agents
    .filter((_, index) => (set & (1 << index)) !== 0)
    .sort((a, b) => a.stage - b.stage)
    .map((agent) => agent.id);

const routeOf = (
  book: Book,
  task: Task,
  choice: Candidate | undefined,
  whenStuck: readonly string[],
): Route => {
  const common = { surface: task.surfaceId, mix: task.mix.id };
  const rows = [
    `surface.${task.surfaceId}`,
    ...task.mix.parts.map((part) => `ink.${part.ink}`),
    ...task.mix.additives.map((dose) => `additive.${dose.additive}`),
  ].filter((row) => book.tagsOf.has(row));
  if (choice !== undefined) {
    return {
      ...common,
      passes: passesOf(book, task, choice),
      band: choice.band,
      because: [...rows, ...pairsOf(book, task, choice), `band.band-${String(choice.band)}`],
    };
  }
  if (task.stuck !== undefined) {
    const wouldDo = task.wouldDo[0];
    return {
      ...common,
      passes: [],
      band: task.band,
      because: [...rows, ...(wouldDo === undefined ? whenStuck : pairsOf(book, task, wouldDo))],
      stuck: task.stuck,
      ...(wouldDo === undefined ? {} : { wouldDo: agentIds(book, wouldDo.agents) }),
    };
  }
  const scraped = task.surface?.method === 'scrape-only' ? [{ do: 'scrape' as const }] : [];
  return { ...common, passes: [...scraped, { do: 'last' }], band: 0, because: rows };
};

const pairsOf = (book: Book, task: Task, { agents }: Candidate): readonly string[] =>
  agentIds(book, agents).map((agent) => `pair.${task.surfaceId}.${agent}`);

const passesOf = (book: Book, task: Task, choice: Candidate): readonly Pass[] => {
  const { surface, mix } = task;
  const { brief } = sure(book.surfaces.get(task.surfaceId));
  const pass = (kind: 'agent' | 'follow-up', agent: number): Pass => ({
    do: kind,
    agent: sure(book.agents[agent]).id,
    ...((brief & (1 << agent)) === 0 ? {} : { brief: true }),
    ...(mix.dried && kind === 'agent' ? { dried: true } : {}),
  });
  return [
    ...(surface?.scrape === undefined || mix.dried ? [] : [{ do: 'scrape' as const }]),
    pass('agent', choice.agent),
    ...(choice.followUp === undefined ? [] : [pass('follow-up', choice.followUp)]),
    { do: 'last' },
  ];
};
