import { thatFits } from './address.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST } from './limits.js';
import type { Problem } from './problem.js';
import { readBench, type Reading } from './readBench.js';
import { ROOM_FIELDS, type TypedBench, type TypedMix, type TypedRoom } from './typedBench.js';

/** What stands in each field of the bench page, by the field's name. */
export type FormValues = ReadonlyMap<string, readonly string[]>;

export interface BenchForm {
  readonly values: FormValues;
  /** Number of mixes to show. */
  readonly mixes: number;
  /** A sheet, one more mix to fill in, or the same page for another region. */
  readonly wants: 'sheet' | 'more' | 'region';
}

/** Separates several things typed into one field; in number fields a comma is a decimal comma. */
const BETWEEN_WORDS = /[,;\n]/;
const BETWEEN_NUMBERS = /[;\n]/;

/**
 * The form that was sent, with all that was typed into it. A field that came
 * twice is a list of texts in the body; whatever is no text is no field.
 */
export function readForm(body: unknown): BenchForm {
  const values = new Map(
    Object.entries(typeof body === 'object' && body !== null ? body : {}).map(
      ([field, value]: readonly [string, unknown]) => [field, textsOf(value)] as const,
    ),
  );
  const shown = Math.max(Number(first(values, 'mixes')) || 1, highestMix(values) + 1);
  const asked = first(values, 'do');
  const wants = asked === 'more' || asked === 'region' ? asked : 'sheet';
  const mixes = Math.min(MOST.mixes, Math.floor(shown) + (wants === 'more' ? 1 : 0));
  return { values, mixes, wants };
}

const textsOf = (value: unknown): readonly string[] =>
  (Array.isArray(value) ? value : [value]).filter((one) => typeof one === 'string');

const all = (values: FormValues, field: string): readonly string[] => values.get(field) ?? [];
const first = (values: FormValues, field: string): string => values.get(field)?.[0] ?? '';

const highestMix = (values: FormValues): number =>
  Math.max(-1, ...[...values.keys()].map((field) => Number(/^mix(\d)\./.exec(field)?.[1] ?? -1)));

/** The bench that the form holds, or what is wrong with it, field by field. */
export function benchOfForm(form: BenchForm, known: KnownIds): Reading {
  const reading = readBench(typedOfForm(form.values), known);
  return reading.bench?.mixes.length === 0 ? { problems: [NO_INK] } : thatFits(reading);
}

/** Who sends the form has looked for an ink: the page asks for one. An address may go without. */
const NO_INK: Problem = {
  path: '/mixes',
  field: 'mix0.ink',
  got: 'no ink',
  accepts: ACCEPTS.anyInk,
};

function typedOfForm(values: FormValues): TypedBench {
  const numbers = Object.entries(ROOM_FIELDS).map(([name, field]) => [name, first(values, field)]);
  return {
    region: first(values, 'region'),
    mixes: Array.from({ length: MOST.mixes }, (_, index) => typedMixOfForm(values, `mix${index}`)),
    surfaces: ticksAndTyped(values, 'surface', 'typedSurface'),
    equipment: ticksAndTyped(values, 'equipment', 'typedEquipment'),
    ...(first(values, 'handKnown') !== '' && { agentsAtHand: all(values, 'hand') }),
    uses: all(values, 'use').map((use) => {
      const [agent = '', ml = ''] = use.split(':');
      return { agent, ml };
    }),
    room: { ...(Object.fromEntries(numbers) as TypedRoom), air: first(values, 'air') },
    people: {
      count: first(values, 'people'),
      under16: first(values, 'under16'),
      flags: all(values, 'who'),
    },
  };
}

const ticksAndTyped = (values: FormValues, ticks: string, typed: string): readonly string[] => [
  ...all(values, ticks),
  ...first(values, typed).split(BETWEEN_WORDS),
];

function typedMixOfForm(values: FormValues, mix: string): TypedMix {
  const parts = things(
    values,
    `${mix}.ink`,
    `${mix}.share`,
    `${mix}.typedInk`,
    `${mix}.typedShare`,
  );
  const additives = things(
    values,
    `${mix}.additive`,
    `${mix}.percent`,
    `${mix}.typedAdditive`,
    `${mix}.typedPercent`,
  );
  const on = all(values, `${mix}.on`);
  return {
    name: first(values, `${mix}.name`),
    parts: parts.map(({ id, much, ...field }) => ({ ink: id, share: much, ...field })),
    additives: additives.map(({ id, much, ...field }) => ({
      additive: id,
      percent: much,
      ...field,
    })),
    dried: first(values, `${mix}.dried`) !== '',
    ...(on.length > 0 && { on }),
  };
}

/**
 * What was ticked, each with the number beside it, then what was typed. A number
 * beside something that is not ticked means that it is there all the same.
 */
function things(
  values: FormValues,
  ticks: string,
  numbers: string,
  typed: string,
  typedNumbers: string,
): { readonly id: string; readonly much: string; readonly field?: string }[] {
  const numbered = [...values]
    .filter(([field, [much = '']]) => field.startsWith(`${numbers}.`) && much.trim() !== '')
    .map(([field]) => field.slice(numbers.length + 1));
  const ids = [...new Set([...all(values, ticks), ...numbered])];
  const words = first(values, typed)
    .split(BETWEEN_WORDS)
    .filter((word) => word.trim() !== '');
  const much = words.length > 1 ? BETWEEN_NUMBERS : '\n';
  const amounts = first(values, typedNumbers).split(much);
  const unnamed = words.length === 0 && first(values, typedNumbers).trim() !== '' ? [''] : [];
  return [
    ...ids.map((id) => ({ id, much: first(values, `${numbers}.${id}`) })),
    ...[...words, ...unnamed].map((id, index) => ({
      id,
      much: amounts[index] ?? '',
      field: typedNumbers,
    })),
  ];
}

/** The bench page filled in with a bench that came by another way, such as an address. */
export function formOf(typed: TypedBench, known: KnownIds): BenchForm {
  const values = new Map<string, readonly string[]>();
  const put = (field: string, ...texts: readonly string[]) => {
    if (texts.some((text) => text !== '')) values.set(field, texts);
  };
  put('region', typed.region);
  typed.mixes.slice(0, MOST.mixes).forEach((mix, index) => {
    putMix(put, `mix${index}`, mix, known);
  });
  putIds(put, 'surface', 'typedSurface', typed.surfaces, known.surfaces);
  putIds(put, 'equipment', 'typedEquipment', typed.equipment, known.equipment);
  put('hand', ...(typed.agentsAtHand ?? []));
  put('handKnown', typed.agentsAtHand ? 'yes' : '');
  put('use', ...typed.uses.map((use) => `${use.agent}:${use.ml}`));
  for (const [name, field] of Object.entries(ROOM_FIELDS)) {
    put(field, typed.room[name as keyof typeof ROOM_FIELDS]);
  }
  put('air', typed.room.air);
  put('people', typed.people.count);
  put('under16', typed.people.under16);
  put('who', ...typed.people.flags);
  return { values, mixes: Math.min(MOST.mixes, Math.max(1, typed.mixes.length)), wants: 'sheet' };
}

type Put = (field: string, ...texts: readonly string[]) => void;

function putIds(
  put: Put,
  ticks: string,
  typed: string,
  ids: readonly string[],
  listed: ReadonlySet<string>,
): void {
  put(ticks, ...ids.filter((id) => listed.has(id)));
  put(typed, ids.filter((id) => !listed.has(id)).join(', '));
}

function putMix(put: Put, name: string, mix: TypedMix, known: KnownIds): void {
  const listed = new Set([...known.additives, ...known.extenders]);
  const inks = mix.parts.map((part) => ({ id: part.ink, much: part.share }));
  const additives = mix.additives.map((one) => ({ id: one.additive, much: one.percent }));
  put(`${name}.name`, mix.name);
  putIds(put, `${name}.ink`, `${name}.typedInk`, inks.map(idOf), known.inks);
  putIds(put, `${name}.additive`, `${name}.typedAdditive`, additives.map(idOf), listed);
  putNumbers(put, `${name}.share`, `${name}.typedShare`, inks, known.inks);
  putNumbers(put, `${name}.percent`, `${name}.typedPercent`, additives, listed);
  put(`${name}.dried`, mix.dried ? 'yes' : '');
  put(`${name}.on`, ...(mix.on ?? []));
}

interface Thing {
  readonly id: string;
  readonly much: string;
}

const idOf = (thing: Thing): string => thing.id;

function putNumbers(
  put: Put,
  field: string,
  typed: string,
  things: readonly Thing[],
  listed: ReadonlySet<string>,
): void {
  for (const thing of things) if (listed.has(thing.id)) put(`${field}.${thing.id}`, thing.much);
  const rest = things.filter((thing) => !listed.has(thing.id)).map((thing) => thing.much);
  if (rest.some((much) => much !== '')) put(typed, rest.join('; '));
}
