import type { Catalogue } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { byId } from './byId.js';

/** A mix as one bar: parts by share, the words beside it. */
export interface RecipeView {
  readonly name: string;
  readonly isDried: boolean;
  readonly parts: readonly PartView[];
}

interface PartView {
  readonly name: string;
  /** "70 %"; empty when no share was given. */
  readonly much: string;
  /** How it is drawn: ink-1 to ink-4, extender, additive or unknown. */
  readonly look: string;
  /** Place and width in the bar, as SVG attributes. */
  readonly x: string;
  readonly width: string;
}

/** What a recipe is drawn from; a mix of the bench, or one that is still being typed. */
export interface RecipeOf {
  readonly name?: string;
  readonly isDried: boolean;
  readonly parts: readonly { readonly ink: string; readonly share?: number }[];
  readonly additives: readonly { readonly additive: string; readonly percent?: number }[];
}

/** Solid, ruled, dotted, crossed: more inks than that in one mix are drawn like the last. */
const INK_LOOKS = 4;
/** Narrowest slice that can still be seen, in percent of the bar. */
const SLIVER = 2;

interface Slice {
  readonly name: string;
  readonly much: number | undefined;
  readonly look: string;
}

/** The parts of a mix with their place in the bar: inks and extenders by share, then additives. */
export function recipeOf(mix: RecipeOf, catalogue: Catalogue, words: Words): RecipeView {
  const slices = [...inkSlices(mix, catalogue, words), ...additiveSlices(mix, catalogue, words)];
  const widths = widthsOf(slices);
  const whole = widths.reduce((sum, width) => sum + width, 0);
  let filled = 0;
  const parts = slices.map((slice, index) => {
    const width = ((widths[index] ?? 0) / whole) * 100;
    const x = filled;
    filled += width;
    return {
      name: slice.name,
      much: slice.much === undefined ? '' : `${slice.much} %`,
      look: slice.look,
      x: `${x.toFixed(2)}%`,
      width: `${width.toFixed(2)}%`,
    };
  });
  return { name: mix.name ?? '', isDried: mix.isDried, parts };
}

/** Inks and extenders, the largest share first. */
function inkSlices(mix: RecipeOf, catalogue: Catalogue, words: Words): Slice[] {
  let inks = 0;
  const lookOf = (id: string): string => {
    const ink = byId(catalogue.inks, id);
    if (!ink) return 'unknown';
    if (ink.extender === true) return 'extender';
    inks = Math.min(inks + 1, INK_LOOKS);
    return `ink-${inks}`;
  };
  return [...mix.parts]
    .sort((one, other) => (other.share ?? 0) - (one.share ?? 0))
    .map(({ ink, share }) => ({ name: words.short('ink', ink), much: share, look: lookOf(ink) }));
}

function additiveSlices(mix: RecipeOf, catalogue: Catalogue, words: Words): Slice[] {
  return mix.additives.map(({ additive, percent }) => ({
    name: words.short('additive', additive),
    much: percent,
    look: byId(catalogue.additives, additive) ? 'additive' : 'unknown',
  }));
}

/** Known shares as they are; parts without one divide what is left of 100 alike. */
function widthsOf(slices: readonly Slice[]): number[] {
  const known = slices.reduce((sum, slice) => sum + (slice.much ?? 0), 0);
  const missing = slices.filter((slice) => slice.much === undefined && slice.look !== 'additive');
  const each = Math.max(100 - known, 0) / Math.max(missing.length, 1);
  return slices.map((slice) => {
    const width = slice.much ?? (slice.look === 'additive' ? 0 : each);
    return Math.max(width, SLIVER);
  });
}
