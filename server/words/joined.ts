/**
 * Words in a row as people say them.
 *
 * @example joined(['oil', 'soap', 'water']) // 'oil, soap and water'
 */
export function joined(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1) ?? ''}`;
}

/** As it stands inside a sentence: "Glass slab" becomes "glass slab", "UV ink" stays. */
export const inside = (label: string): string =>
  /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;

/** As it stands at the start of a sentence. */
export const opening = (label: string): string => label.charAt(0).toUpperCase() + label.slice(1);

/** Words ended with a full stop, unless they have an end of their own. */
export const sentence = (words: string): string =>
  words === '' || /[.!?]$/.test(words) ? opening(words) : `${opening(words)}.`;
