import type { AgentSet } from '../book/agentSet.js';

/** One way to take a mix off a surface: an agent, and what takes its residue off. */
export interface Candidate {
  readonly agent: number;
  readonly followUp: number | undefined;
  readonly agents: AgentSet;
  readonly band: number;
  readonly hazard: number;
  /** How many of its agents the surface stands only briefly. */
  readonly briefs: number;
}
