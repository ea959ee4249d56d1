/** A set of agents as bits, in the order of agents.yaml. */
export type AgentSet = number;

/** How many agents are in a set. */
export const sizeOf = (set: AgentSet): number => {
  let size = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) size += 1;
  return size;
};
