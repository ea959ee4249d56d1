import type { Catalogue } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { benchToAddress } from '../forms/address.js';
import type { BenchForm } from '../forms/benchForm.js';
import { MOST } from '../forms/limits.js';
import type { Problem } from '../forms/problem.js';
import { byId } from './byId.js';
import { frameOf, type FrameView } from './frame.js';
import { isUsed, mixForm, type MixFormView } from './mixForm.js';
import {
  fieldView,
  firstTyped,
  pickView,
  type FieldView,
  type PickView,
  type Typed,
} from './picks.js';

/** The bench page: usual benches, then the form, with all that was typed. */
export interface BenchView {
  readonly frame: FrameView;
  readonly usual: readonly {
    readonly name: string;
    readonly says: string;
    readonly href: string;
  }[];
  readonly problems: readonly ProblemView[];
  readonly mixes: readonly MixFormView[];
  readonly mixCount: number;
  readonly mayAddMix: boolean;
  readonly surfaces: FieldView;
  readonly commonSurfaces: readonly PickView[];
  readonly rareSurfaces: readonly PickView[];
  readonly isRareOpen: boolean;
  readonly typedSurface: FieldView;
  readonly equipment: FieldView;
  readonly machines: readonly PickView[];
  readonly typedEquipment: FieldView;
  readonly hand: FieldView;
  readonly isHandKnown: boolean;
  readonly agents: readonly PickView[];
  readonly others: readonly PickView[];
  readonly room: Readonly<
    Record<'volume' | 'length' | 'width' | 'height' | 'ach' | 'fan', FieldView>
  >;
  readonly airs: readonly OptionView[];
  readonly people: FieldView;
  readonly under16: PickView;
  readonly who: readonly PickView[];
  readonly region: FieldView;
  readonly regions: readonly OptionView[];
  /** What came with the address and has no field here: carried along unseen. */
  readonly carried: readonly { readonly name: string; readonly value: string }[];
}

export interface OptionView {
  readonly value: string;
  readonly label: string;
  readonly isOn: boolean;
}

interface ProblemView {
  /** Leads to the field; empty when it is about the whole bench. */
  readonly href: string;
  readonly labelKey: string;
  readonly subject: string;
  readonly got: string;
  readonly accepts: string;
}

export interface BenchContext {
  readonly catalogue: Catalogue;
  readonly words: Words;
  readonly form: BenchForm;
  readonly problems: readonly Problem[];
}

/** The bench page, filled in with `form`, each of `problems` beside its field. */
export function benchView(context: BenchContext): BenchView {
  const { catalogue, words, form, problems } = context;
  const typed: Typed = { values: form.values, problems };
  const field = (name: string) => fieldView(typed, name);
  const surfaces = catalogue.surfaces.map((row) => ({
    isCommon: row.common === true,
    pick: pickView(typed, {
      field: 'surface',
      value: row.id,
      label: row.shortName,
      drawing: row.drawing,
    }),
  }));
  const rareSurfaces = surfaces.filter((one) => !one.isCommon).map((one) => one.pick);
  const typedSurface = field('typedSurface');
  const chosen = byId(catalogue.regions, firstTyped(typed, 'region'));
  return {
    frame: frameOf(
      'bench',
      { key: 'bench.title' },
      {
        region: firstTyped(typed, 'region'),
        scripts: ['bench.js'],
      },
    ),
    usual: catalogue.usualBenches.map((row) => ({
      name: row.name,
      says: row.short,
      href: `/sheet?${benchToAddress({ ...row.bench, ...(chosen && { region: chosen.id }) })}`,
    })),
    problems: problems.map((problem) => problemView(problem, words)),
    mixes: Array.from({ length: form.mixes }, (_, index) => mixForm(index, typed, context)),
    mixCount: form.mixes,
    mayAddMix: form.mixes < MOST.mixes,
    surfaces: field('surface'),
    commonSurfaces: surfaces.filter((one) => one.isCommon).map((one) => one.pick),
    rareSurfaces,
    isRareOpen:
      rareSurfaces.some(isUsed) || typedSurface.value !== '' || typedSurface.wrongId !== '',
    typedSurface,
    equipment: field('equipment'),
    machines: catalogue.equipment.map((row) =>
      pickView(typed, {
        field: 'equipment',
        value: row.id,
        label: row.shortName,
        drawing: row.drawing,
      }),
    ),
    typedEquipment: field('typedEquipment'),
    hand: field('hand'),
    isHandKnown: firstTyped(typed, 'handKnown') !== '',
    agents: catalogue.agents.map((row) =>
      pickView(typed, { field: 'hand', value: row.id, label: row.shortName }),
    ),
    others: catalogue.others.map((row) =>
      pickView(typed, { field: 'equipment', value: row.id, label: row.name }),
    ),
    room: {
      volume: field('roomM3'),
      length: field('roomLength'),
      width: field('roomWidth'),
      height: field('roomHeight'),
      ach: field('ach'),
      fan: field('fan'),
    },
    airs: airsOf(typed, { catalogue, words }),
    people: field('people'),
    under16: pickView(typed, {
      field: UNDER_16,
      value: 'yes',
      label: words.name('person', UNDER_16),
    }),
    who: catalogue.people
      .filter((row) => row.id !== UNDER_16)
      .map((row) => pickView(typed, { field: 'who', value: row.id, label: row.name })),
    region: field('region'),
    regions: catalogue.regions.map((row) => ({
      value: row.id,
      label: row.name,
      isOn: row === chosen,
    })),
    carried: carriedOf(typed, catalogue),
  };
}

/** The one person whose answer is a key of the bench by itself. */
const UNDER_16 = 'under16';

/** The kinds of air that can be had: the strictest step of the scale is not one, but a ban. */
export function airsOf(
  typed: Typed,
  { catalogue, words }: Pick<BenchContext, 'catalogue' | 'words'>,
): readonly OptionView[] {
  const chosen = firstTyped(typed, 'air');
  const scale = byId(catalogue.scales, 'air')?.levels ?? [];
  const levels = scale.slice(0, -1);
  const options = levels.map(({ id, name }) => ({ value: id, label: name, isOn: id === chosen }));
  const isListed = chosen === '' || options.some((option) => option.isOn);
  if (isListed) return options;
  const label = byId(scale, chosen)?.name ?? `${chosen} (${words.message('bench.notKnown')})`;
  return [...options, { value: chosen, label, isOn: true }];
}

const MIX_FIELD = /^mix(\d+)\.(share|percent)?\.?(.+)$/;

function problemView(problem: Problem, words: Words): ProblemView {
  const { field, got, accepts } = problem;
  const [, mix = '', kind, rest = ''] = MIX_FIELD.exec(field) ?? [];
  const row = kind === 'share' ? words.short('ink', rest) : words.short('additive', rest);
  return {
    href: field === '' ? '' : `#${field}`,
    labelKey: `field.${kind ?? (mix === '' ? field || 'bench' : rest)}`,
    subject: kind === undefined ? '' : row,
    got,
    accepts,
  };
}

/** Fields of an address that the page does not show. */
const UNSEEN = /^(use|temp|mixing|mix\d+\.on)$/;

function carriedOf(typed: Typed, catalogue: Catalogue): BenchView['carried'] {
  const shown: Readonly<Record<string, readonly { readonly id: string }[]>> = {
    hand: catalogue.agents,
    who: catalogue.people,
  };
  return [...typed.values].flatMap(([name, values]) => {
    const rows = shown[name];
    const unseen = UNSEEN.test(name)
      ? values
      : values.filter((value) => rows && !byId(rows, value));
    return unseen.map((value) => ({ name, value }));
  });
}
