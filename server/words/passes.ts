import type { Agent, Catalogue, Pass, Route } from '../reasoning/index.js';
import { inside, opening } from './joined.js';

/** Says how a surface is cleaned. */
export interface PassWords {
  /** One pass, with how its agent is put on, as it stands inside a sentence. */
  readonly pass: (pass: Pass, surfaceId: string) => string;
  /** The working order of a route; how an ordinary pass is done is said once, by `how`. */
  readonly passes: (route: Route) => string;
  /** How an agent is put on, on fresh ink or on dried. */
  readonly how: (agentId: string, isDried: boolean) => string;
}

/** Words of passes, from the apply columns of agents and pairs and the scrape and last of surfaces. */
export function makePasses(catalogue: Catalogue): PassWords {
  const surfaces = new Map(catalogue.surfaces.map((row) => [row.id, row]));
  const agents = new Map(catalogue.agents.map((row) => [row.id, row]));
  const ownWays = new Map(catalogue.pairs.map((pair) => [pair.id, pair.apply]));
  const ownWay = (surfaceId: string, agent: Agent) => ownWays.get(`${surfaceId}.${agent.id}`);
  const say = (pass: Pass, surfaceId: string, how: (agent: Agent) => string | undefined) => {
    const surface = surfaces.get(surfaceId);
    switch (pass.do) {
      case 'scrape':
        return surface?.scrape ?? '';
      case 'agent':
      case 'follow-up':
        return withHow(pass, agents.get(pass.agent ?? ''), how);
      case 'last':
        return inside(surface?.last ?? 'wipe dry');
    }
  };
  return {
    pass: (pass, surfaceId) =>
      say(
        pass,
        surfaceId,
        (agent) =>
          ownWay(surfaceId, agent) ?? howTo(agent, pass.brief === true, pass.dried === true),
      ),
    passes: ({ passes, surface }) => {
      const steps = passes.map((pass) =>
        say(
          pass,
          surface,
          (agent) => ownWay(surface, agent) ?? (pass.brief === true ? agent.applyBrief : undefined),
        ),
      );
      return opening(steps.join(', then '));
    },
    how: (agentId, isDried) => {
      const agent = agents.get(agentId);
      return agent ? howTo(agent, false, isDried) : '';
    },
  };
}

function withHow(
  pass: Pass,
  agent: Agent | undefined,
  how: (agent: Agent) => string | undefined,
): string {
  if (!agent) return pass.agent ?? '';
  const words = how(agent);
  const name = inside(agent.shortName);
  return words === undefined ? name : `${name} (${words})`;
}

/** Dried ink wants time under the agent, which a `brief` surface must not give it. */
function howTo(agent: Agent, isBrief: boolean, isDried: boolean): string {
  if (isBrief) return agent.applyBrief;
  return isDried ? `${agent.apply}; dried ink: ${agent.applyDried}` : agent.apply;
}
