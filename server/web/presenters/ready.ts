import type { Catalogue, Sheet } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { byId } from './byId.js';

/** What to have in hand before the first rag is wet. */
export interface ReadyView {
  readonly agents: readonly {
    readonly name: string;
    readonly href: string;
    readonly amount: string;
    /** "Danger" or "Warning", as on its label; empty when it has neither. */
    readonly signal: string;
    readonly signs: readonly { readonly svg: string; readonly nameKey: string }[];
  }[];
  readonly rags: string;
  /** How many plans this one was chosen from, digits in threes; empty when there was no choice. */
  readonly chosenFrom: string;
}

/** Agents with their amounts and signs, in working order, and how many rags. */
export function readyOf(sheet: Sheet, catalogue: Catalogue, words: Words): ReadyView {
  const { region } = sheet.bench;
  const { chosenFrom } = sheet.plan;
  return {
    agents: sheet.plan.agents.map((id) => {
      const agent = byId(catalogue.agents, id);
      const substance = agent && byId(catalogue.substances, agent.substance);
      const amount = sheet.amounts.ml.find((one) => one.agent === id);
      return {
        name: words.short('agent', id),
        href: `/rules/agent.${encodeURIComponent(id)}`,
        amount: amount ? words.amount(amount.range, 'ml', region) : '',
        signal: substance?.signal ?? '',
        signs: (substance?.pictograms ?? []).map((sign) => ({
          svg: `signs/${sign}`,
          nameKey: `sign.${sign}`,
        })),
      };
    }),
    rags: words.amount(sheet.amounts.rags, 'rags', region),
    chosenFrom: chosenFrom === '1' ? '' : chosenFrom.replace(/\B(?=(\d{3})+$)/g, '\u00a0'),
  };
}
