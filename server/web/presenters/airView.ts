import type { AirInput, Catalogue, Reasoner } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import type { AirForm } from '../forms/airForm.js';
import type { Problem } from '../forms/problem.js';
import { airAnswersView, type AirAnswersView } from './airAnswersView.js';
import { airFormView, type AirFormView } from './airFormView.js';
import { airLimitsView, type AirLimitView } from './airLimitsView.js';
import { airPlotView, type AirPlotView } from './airPlotView.js';
import { airProblems, type AirProblemView } from './airProblems.js';
import { airChanges } from './airWhatIf.js';
import { airWhatIfView, type AirWhatIfRow } from './airWhatIfView.js';
import { frameOf, type FrameView } from './frame.js';

/** The page of the air: answers first where there are any, then the form. */
export interface AirView {
  readonly frame: FrameView;
  /** An estimate and no promise. */
  readonly estimate: string;
  /** Who and what comes before this page. */
  readonly defer: readonly string[];
  readonly problems: readonly AirProblemView[];
  /** A room was said, and nothing that is used in it. */
  readonly needsUse: boolean;
  /** None until a room and a use are said. */
  readonly results: readonly AirResultView[];
  readonly form: AirFormView;
}

interface AirResultView {
  readonly answers: AirAnswersView;
  readonly plot: AirPlotView;
  readonly limits: readonly AirLimitView[];
  readonly limitsElsewhere: readonly AirLimitView[];
  readonly whatIf: readonly AirWhatIfRow[];
  readonly cautions: readonly string[];
}

export interface AirContext {
  readonly reasoner: Pick<Reasoner, 'air'>;
  readonly catalogue: Catalogue;
  readonly words: Words;
  /** All that was typed. */
  readonly form: AirForm;
  readonly problems: readonly Problem[];
  /** Rows that were asked for; 0: no more than are needed. */
  readonly rows: number;
  /** Absent: nothing to work out yet. */
  readonly input?: AirInput | undefined;
}

/** Said beside every estimate, in a frame of its own. */
const ESTIMATE = 'estimate';
/** Regions that no table has are those of everywhere else. */
const ELSEWHERE = 'other';

/** The page of the air. */
export function airView(context: AirContext): AirView {
  const { words, form, problems, input } = context;
  const region = input?.region ?? ELSEWHERE;
  const { volumeM3, lengthM } = input?.room ?? {};
  const isSized = volumeM3 !== undefined || lengthM !== undefined;
  return {
    frame: frameOf('air', { key: 'air.title' }, { region: input?.region ?? '' }),
    estimate: words.airCaution({ id: ESTIMATE, values: {} }),
    defer: words.defer(region),
    problems: airProblems(problems, words),
    needsUse: isSized && input?.uses.length === 0,
    results: input && input.uses.length > 0 ? [resultOf(input, context)] : [],
    form: airFormView({ ...context, form }),
  };
}

function resultOf(input: AirInput, { reasoner, catalogue, words }: AirContext): AirResultView {
  const answer = reasoner.air(input);
  const limits = airLimitsView(answer, { words, catalogue });
  const changes = airChanges({ input, answer }, { reasoner, catalogue, words });
  return {
    answers: airAnswersView(answer, words),
    plot: airPlotView(answer, words),
    limits: limits.here,
    limitsElsewhere: limits.elsewhere,
    whatIf: airWhatIfView(answer, changes, words),
    cautions: answer.cautions.filter(({ id }) => id !== ESTIMATE).map(words.airCaution),
  };
}
