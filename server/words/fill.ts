/** A text cut once at its {placeholders}, to be filled many times. */
export type Template = readonly Piece[];

interface Piece {
  readonly literal: string;
  /** The placeholder that follows; absent at the end. */
  readonly place?: Place;
}

/** Where a value goes, and what stands round it. */
export interface Place {
  readonly key: string;
  /** It opens a sentence. */
  readonly opens: boolean;
  /** It is a sentence by itself, with no full stop after it. */
  readonly stands: boolean;
}

const PLACEHOLDER = /\{(\w+)\}/g;

/** Cuts a text at its placeholders. */
export function makeTemplate(text: string): Template {
  const pieces: Piece[] = [];
  let from = 0;
  for (const found of text.matchAll(PLACEHOLDER)) {
    const literal = text.slice(from, found.index);
    from = found.index + found[0].length;
    const opens = found.index === 0 || /[.!?] $/.test(literal);
    const stands = opens && from === text.length;
    pieces.push({ literal, place: { key: found[1] ?? '', opens, stands } });
  }
  return [...pieces, { literal: text.slice(from) }];
}

/** The text with each placeholder filled by what `value` says for it. */
export function fill(template: Template, value: (place: Place) => string): string {
  let text = '';
  for (const { literal, place } of template) text += place ? literal + value(place) : literal;
  return text;
}
