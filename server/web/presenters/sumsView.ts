import type { Catalogue } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import type { Problem } from '../forms/problem.js';
import type { Fields } from '../forms/sumsFields.js';
import type { Outcome, Sum } from '../forms/sumsSum.js';
import { frameOf, type FrameView } from './frame.js';
import { sourceView } from './ruleView.js';
import { fieldView, unitView, type SumFieldView, type SumUnitView } from './sumsFieldView.js';
import { resultView, type SumResultView } from './sumsResultView.js';

/** The page of small sums: a form each, one of them filled in and worked out. */
export interface SumsView {
  readonly frame: FrameView;
  readonly sums: readonly SumView[];
}

interface SumView {
  readonly id: string;
  readonly title: string;
  readonly lead: string;
  readonly words: string;
  readonly formula: string;
  readonly fields: readonly SumFieldView[];
  readonly lists: readonly {
    readonly title: string;
    readonly units: readonly SumUnitView[];
    readonly rows: readonly { readonly name: string; readonly fields: readonly SumFieldView[] }[];
  }[];
  readonly problems: readonly { readonly href: string; readonly label: string }[];
  /** Null where it was not sent, or could not be worked out. */
  readonly result: SumResultView | null;
  readonly sources: readonly ReturnType<typeof sourceView>[];
}

/** What was sent: which sum, all that was typed, and what came of it. */
export interface SentSum {
  readonly id: string;
  readonly query: URLSearchParams;
  readonly outcome?: Outcome | undefined;
  readonly problems?: readonly Problem[] | undefined;
}

const NOTHING = new URLSearchParams();

/** The page with the form that was sent filled in again; the others are empty. */
export function sumsView(
  sums: readonly Sum[],
  sent: SentSum | undefined,
  parts: { readonly catalogue: Catalogue; readonly words: Words },
): SumsView {
  return {
    frame: frameOf('sums', { key: 'sums.title' }),
    sums: sums.map((sum) => sumView(sum, sent?.id === sum.id ? sent : undefined, parts)),
  };
}

function sumView(
  sum: Sum,
  sent: SentSum | undefined,
  { catalogue, words: { message } }: { readonly catalogue: Catalogue; readonly words: Words },
): SumView {
  const query = sent?.query ?? NOTHING;
  const problems = new Map(sent?.problems?.map((problem) => [problem.field, problem]));
  const said = (what: string) => message(`sums.${sum.id}.${what}`);
  const viewsOf = (fields: Fields, list = '', row = 0) =>
    Object.entries(fields).map((field) =>
      fieldView(field, { sum: sum.id, list, row, query, problems, message }),
    );
  return {
    id: sum.id,
    title: said('title'),
    lead: said('lead'),
    words: said('words'),
    formula: said('formula'),
    fields: viewsOf(sum.fields),
    lists: Object.entries(sum.lists).map(([name, { fields, shown }]) => ({
      title: message(`sums.list.${name}`),
      units: Object.entries(fields).flatMap((field) =>
        unitView(field, { sum: sum.id, list: name, query, message }),
      ),
      rows: Array.from({ length: shown }, (_, row) => ({
        name: message('sums.rowOf', { n: row + 1 }),
        fields: viewsOf(fields, name, row),
      })),
    })),
    problems: (sent?.problems ?? []).map(({ field }) => ({
      href: `#${sum.id}-${field}`,
      label: labelOf(field, message),
    })),
    result: sent?.outcome ? resultView(sum, sent.outcome, { catalogue, message }) : null,
    sources: catalogue.sources.filter(({ id }) => sum.sources.includes(id)).map(sourceView),
  };
}

/** The label of an input by its name; in a list with its row. */
function labelOf(input: string, message: Words['message']): string {
  const [list = '', row = '', name] = input.split('-');
  return name === undefined
    ? message(`sums.field.${list}`)
    : `${message('sums.rowOf', { n: row })}: ${message(`sums.field.${name}`)}`;
}
