import type { Additive, Catalogue, Ink, InkGroup } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { readNumber } from '../forms/number.js';
import {
  fieldView,
  firstTyped,
  pickView,
  type FieldView,
  type PickView,
  type Typed,
} from './picks.js';
import { recipeOf, type RecipeView } from './recipe.js';

/** One mix of the bench page: inks by family, additives, and what is in no list. */
export interface MixFormView {
  /** Counted from one, for people. */
  readonly number: number;
  readonly isFirst: boolean;
  readonly field: string;
  readonly name: FieldView;
  /** The message about the mix as a whole, beside its inks. */
  readonly inks: FieldView;
  readonly families: readonly { readonly titleKey: string; readonly picks: readonly PickView[] }[];
  readonly typedInk: FieldView;
  readonly typedShare: FieldView;
  readonly additives: FieldView;
  readonly common: readonly PickView[];
  readonly rare: readonly PickView[];
  /** True when something in the folded part is in use. */
  readonly isRareOpen: boolean;
  readonly typedAdditive: FieldView;
  readonly typedPercent: FieldView;
  readonly driedField: string;
  readonly isDried: boolean;
  readonly recipe: RecipeView;
}

const FAMILIES: readonly InkGroup[] = [
  'oil',
  'washable-oil',
  'water',
  'screen',
  'litho-drawing',
  'ground-and-resist',
];

/** The fields of mix number `index`, from nought, with what was typed into them. */
export function mixForm(
  index: number,
  typed: Typed,
  { catalogue, words }: { readonly catalogue: Catalogue; readonly words: Words },
): MixFormView {
  const field = `mix${index}`;
  const inkPick = (ink: Ink) =>
    pickView(typed, {
      field: `${field}.ink`,
      value: ink.id,
      label: ink.shortName,
      amount: `${field}.share.${ink.id}`,
      isExtender: ink.extender === true,
    });
  const additivePick = ({ id, shortName }: Additive | Ink) =>
    pickView(typed, {
      field: `${field}.additive`,
      value: id,
      label: shortName,
      amount: `${field}.percent.${id}`,
    });
  const families = FAMILIES.map((group) => ({
    titleKey: `family.${group}`,
    picks: catalogue.inks.filter((ink) => ink.group === group).map(inkPick),
  }));
  const common = catalogue.additives.filter((one) => one.common === true).map(additivePick);
  const extenders = catalogue.inks.filter((one) => one.extender === true).map(additivePick);
  const rare = [
    ...catalogue.additives.filter((one) => one.common !== true).map(additivePick),
    // Extenders stand among the inks; one that came as an additive is shown where it was put.
    ...extenders.filter((pick) => pick.isOn),
  ];
  const typedInk = fieldView(typed, `${field}.typedInk`);
  const typedShare = fieldView(typed, `${field}.typedShare`);
  const typedAdditive = fieldView(typed, `${field}.typedAdditive`);
  return {
    number: index + 1,
    isFirst: index === 0,
    field,
    name: fieldView(typed, `${field}.name`),
    inks: fieldView(typed, `${field}.ink`),
    families,
    typedInk,
    typedShare,
    additives: fieldView(typed, `${field}.additive`),
    common,
    rare,
    isRareOpen: rare.some(isUsed) || typedAdditive.value !== '' || typedAdditive.wrongId !== '',
    typedAdditive,
    typedPercent: fieldView(typed, `${field}.typedPercent`),
    driedField: `${field}.dried`,
    isDried: firstTyped(typed, `${field}.dried`) !== '',
    recipe: recipeOf(
      {
        name: firstTyped(typed, `${field}.name`),
        isDried: false,
        parts: [
          ...families
            .flatMap(({ picks }) => picks)
            .filter((pick) => pick.isOn)
            .map((pick) => ({ ink: pick.value, ...numbered('share', pick.amounts[0]) })),
          ...(typedInk.value.trim() === ''
            ? []
            : [{ ink: typedInk.value, ...numbered('share', typedShare) }]),
        ],
        additives: [...common, ...rare]
          .filter((pick) => pick.isOn)
          .map((pick) => ({ additive: pick.value, ...numbered('percent', pick.amounts[0]) })),
      },
      catalogue,
      words,
    ),
  };
}

/** Ticked, or wrong: what folds it away must stand open. */
export const isUsed = (pick: PickView): boolean =>
  pick.isOn || pick.amounts.some((amount) => amount.wrongId !== '');

/** The number in a field under that key, when it can be read. */
function numbered<K extends string>(
  key: K,
  field: FieldView | undefined,
): { readonly [key in K]?: number } {
  const value = readNumber(field?.value ?? '');
  return value === undefined ? {} : ({ [key]: value } as { readonly [key in K]?: number });
}
