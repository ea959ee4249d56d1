/** A piece of text in a drawing, in one line or more; `y` is its middle. */
export interface Label {
  readonly lines: readonly string[];
  readonly className: string;
  readonly x: number;
  readonly y: number;
  /** Whether the text starts or ends at x. */
  readonly anchor: 'start' | 'end';
}

/** Height of a line of text, and where text may stand. */
export interface Page {
  readonly lineHeight: number;
  readonly top: number;
  readonly bottom: number;
}

/** Letters are no wider than this on average, in heights of a line. */
const LETTER = 0.47;
/** For sums of decimals. */
const HAIR = 1e-6;

/** How wide a line of text is at most. */
export const widthOf = (text: string, { lineHeight }: Pick<Page, 'lineHeight'>): number =>
  text.length * lineHeight * LETTER;

/** A text broken between words into lines of at most that width. */
export const brokenInto = (text: string, width: number, page: Page): readonly string[] =>
  text.split(' ').reduce<readonly string[]>((lines, word) => {
    const last = lines.at(-1);
    const longer = `${last ?? ''} ${word}`;
    return last !== undefined && widthOf(longer, page) <= width
      ? [...lines.slice(0, -1), longer]
      : [...lines, word];
  }, []);

/** Where a label begins and ends. */
export const spanOf = ({ lines, anchor, x }: Label, page: Page): readonly [number, number] => {
  const width = Math.max(...lines.map((text) => widthOf(text, page)));
  return anchor === 'start' ? [x, x + width] : [x - width, x];
};

/** How high a label is. */
const heightOf = ({ lines }: Label, { lineHeight }: Page): number => lines.length * lineHeight;

/** The same labels, none over another: each as near as can be above where it was, else below. */
export const apart = (labels: readonly Label[], page: Page): readonly Label[] =>
  labels.reduce<readonly Label[]>((placed, label) => [...placed, freed(label, placed, page)], []);

const freed = (label: Label, placed: readonly Label[], page: Page): Label => {
  const half = heightOf(label, page) / 2;
  const [top, bottom] = [page.top + half, page.bottom - half];
  const beside = placed
    .filter((other) => overlaps(spanOf(label, page), spanOf(other, page)))
    .map((other) => ({ y: other.y, away: half + heightOf(other, page) / 2 }));
  const wanted = Math.min(bottom, Math.max(top, label.y));
  const free = [wanted, ...beside.flatMap(({ y, away }) => [y - away, y + away])].filter(
    (y) =>
      y >= top &&
      y <= bottom &&
      beside.every((other) => Math.abs(other.y - y) >= other.away - HAIR),
  );
  const above = free.filter((y) => y <= wanted);
  const y = above.length > 0 ? Math.max(...above) : Math.min(...free);
  return { ...label, y: Number.isFinite(y) ? y : wanted };
};

const overlaps = (
  [from, to]: readonly [number, number],
  [otherFrom, otherTo]: readonly [number, number],
): boolean => from < otherTo && otherFrom < to;
