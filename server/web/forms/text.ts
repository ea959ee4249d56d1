import { MOST } from './limits.js';

/** Letters that give an address its structure, control codes and half characters. */
const NOT_TEXT = /[,:/;@~\p{C}\s]+/gu;

/** What most ids look like: nothing to clean. */
const PLAIN_ID = /^[a-z0-9-]{1,60}$/;

/**
 * Typed text as it is kept: structure letters and control codes become spaces,
 * runs of spaces one, ends trimmed, at most 60 letters.
 *
 * @example cleanText(' tram: green ') // 'tram green'
 */
export function cleanText(typed: string): string {
  if (PLAIN_ID.test(typed)) return typed;
  const spaced = typed.normalize('NFC').replace(NOT_TEXT, ' ').trim();
  return spaced.length <= MOST.letters
    ? spaced
    : Array.from(spaced).slice(0, MOST.letters).join('').trim();
}

/** What was typed, short enough to be shown back. */
export function shown(typed: string): string {
  const spaced = typed.replace(/[\p{C}\s]+/gu, ' ').trim();
  const letters = Array.from(spaced);
  return letters.length <= MOST.letters
    ? spaced
    : `${letters.slice(0, MOST.letters).join('')}... (${letters.length.toLocaleString('en-GB')} letters)`;
}
