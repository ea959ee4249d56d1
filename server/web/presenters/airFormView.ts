import type { Catalogue } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { AIR_ROOM_FIELDS, AIR_USE_FIELDS, type AirForm } from '../forms/airForm.js';
import { MOST } from '../forms/limits.js';
import type { Problem } from '../forms/problem.js';
import { SUBSTANCE } from '../forms/readAir.js';
import { airsOf, type OptionView } from './benchView.js';
import { fieldView, firstTyped, type FieldView, type Typed } from './picks.js';

/** The form of the air page with all that was typed. */
export interface AirFormView {
  readonly regions: readonly OptionView[];
  readonly region: FieldView;
  readonly airs: readonly OptionView[];
  readonly room: Readonly<Record<keyof typeof AIR_ROOM_FIELDS, FieldView>>;
  readonly isRoomOpen: boolean;
  readonly zones: readonly OptionView[];
  readonly shift: FieldView;
  readonly rows: readonly AirRowView[];
  /** How many rows the next page has; 0: no more. */
  readonly moreRows: number;
}

interface AirRowView {
  readonly name: string;
  readonly what: FieldView;
  readonly liquids: readonly { readonly name: string; readonly options: readonly OptionView[] }[];
  readonly ml: FieldView;
  readonly start: FieldView;
  readonly minutes: FieldView;
  readonly evaporates: FieldView;
  readonly lid: string;
  readonly isLidded: boolean;
  readonly isOpen: boolean;
}

export interface AirFormContext {
  readonly catalogue: Catalogue;
  readonly words: Words;
  readonly form: AirForm;
  readonly problems: readonly Problem[];
  /** Rows that were asked for. */
  readonly rows: number;
}

/** Rows that are there before anybody asks for more, and how many more come each time. */
const ROWS = 4;

/** The form, each problem beside its field. */
export function airFormView(context: AirFormContext): AirFormView {
  const { catalogue, words, form, problems } = context;
  const typed: Typed = { values: valuesOf(form), problems };
  const field = (name: string): FieldView => fieldView(typed, name);
  const count = Math.min(MOST.airUses, Math.max(ROWS, form.uses.length, context.rows));
  const { volumeM3, lengthM, widthM, heightM, ...others } = mapped(AIR_ROOM_FIELDS, field);
  const shift = field('shift');
  const hasMore = [...Object.values(others), shift, field('zones')].some(isTyped);
  return {
    region: field('in'),
    regions: catalogue.regions.map(({ id, name }) => ({
      value: id,
      label: name,
      isOn: id === firstTyped(typed, 'in'),
    })),
    airs: airsOf(typed, { catalogue, words }),
    room: { volumeM3, lengthM, widthM, heightM, ...others },
    isRoomOpen: hasMore,
    zones: [
      { value: '2', label: words.message('air.zones.two'), isOn: form.zones !== '1' },
      { value: '1', label: words.message('air.zones.one'), isOn: form.zones === '1' },
    ],
    shift,
    rows: Array.from({ length: count }, (_, row) => rowView(row, typed, context)),
    moreRows: count < MOST.airUses ? count + ROWS : 0,
  };
}

const isTyped = ({ value, wrongId }: FieldView): boolean => value !== '' || wrongId !== '';

function rowView(
  row: number,
  typed: Typed,
  { catalogue, words, form }: AirFormContext,
): AirRowView {
  const fields = mapped(AIR_USE_FIELDS, (name) => fieldView(typed, `${name}${String(row)}`));
  const { what, ml, startMin: start, minutes, evaporates } = fields;
  const isLidded = form.uses[row]?.lidded === true;
  return {
    name: words.message('air.use', { n: row + 1 }),
    ...{ what, ml, start, minutes, evaporates, isLidded },
    liquids: liquidsFor(what.value, { catalogue, words }),
    lid: `lid${String(row)}`,
    isOpen: isLidded || [start, minutes, evaporates].some(isTyped),
  };
}

/** Agents, then the substances they are made of and others; what no table has stands last. */
function liquidsFor(
  chosen: string,
  { catalogue, words }: Pick<AirFormContext, 'catalogue' | 'words'>,
): AirRowView['liquids'] {
  const { message } = words;
  const option = (value: string, label: string): OptionView => ({
    value,
    label,
    isOn: value === chosen,
  });
  const agents = catalogue.agents.map(({ id, name }) => option(id, name));
  const substances = catalogue.substances
    .filter(({ vapourPressurePa }) => vapourPressurePa !== undefined)
    .map(({ id, name }) => option(`${SUBSTANCE}${id}`, name));
  const unlisted = message('air.unlisted');
  const isListed = [...agents, ...substances].some(({ isOn }) => isOn);
  const others = isListed || chosen === '' || chosen === unlisted ? [] : [option(chosen, chosen)];
  return [
    { name: message('air.agents'), options: agents },
    { name: message('air.substances'), options: substances },
    { name: unlisted, options: [...others, option(unlisted, unlisted)] },
  ];
}

/** What was typed, by the names of the fields that hold it. */
function valuesOf({ region, room, zones, shift, uses }: AirForm): Typed['values'] {
  return new Map(
    [
      ['in', region],
      ['air', room.air],
      ['zones', zones],
      ['shift', shift],
      ...Object.entries(AIR_ROOM_FIELDS).map(([key, name]) => [
        name,
        room[key as keyof typeof AIR_ROOM_FIELDS],
      ]),
      ...uses.flatMap((use, row) =>
        Object.entries(AIR_USE_FIELDS).map(([key, name]) => [
          `${name}${String(row)}`,
          use[key as keyof typeof AIR_USE_FIELDS],
        ]),
      ),
    ].map(([name = '', value = '']) => [name, [value]] as const),
  );
}

/** The same keys, each with what `make` makes of its value. */
const mapped = <K extends string, T>(
  fields: Readonly<Record<K, string>>,
  make: (name: string) => T,
): Record<K, T> =>
  Object.fromEntries(
    Object.entries<string>(fields).map(([key, name]) => [key, make(name)]),
  ) as Record<K, T>;
