export const COLUMNS = 76;

/**
 * Words broken into lines of at most 76 letters; the first starts with `first`,
 * the others are set in as far. A word longer than a line stands alone.
 */
export function wrapped(words: string, first = ''): string {
  const inset = ' '.repeat(first.length);
  const lines: string[] = [];
  let line = first;
  let isFresh = true;
  for (const word of words.split(/\s+/).filter((one) => one !== '')) {
    if (!isFresh && line.length + 1 + word.length > COLUMNS) {
      lines.push(line);
      line = inset;
      isFresh = true;
    }
    line += isFresh ? word : ` ${word}`;
    isFresh = false;
  }
  return [...lines, line].join('\n').trimEnd();
}
