import { describe, expect, it } from 'vitest';
import { apart, brokenInto, type Label } from '../../../server/output/plot/labels.js';

const page = { lineHeight: 10, top: 0, bottom: 100 };
const label = (y: number, but: Partial<Label> = {}): Label => ({
  ...{ lines: ['a limit'], className: '', x: 50, anchor: 'end', y },
  ...but,
});
const places = (...labels: readonly Label[]) => apart(labels, page).map(({ y }) => y);

describe('labels', () => {
  it('stay where they are as long as they cover no other', () => {
    expect(places(label(80), label(60))).toEqual([80, 60]);
    expect(places(label(80), label(80, { x: 50, anchor: 'start' }))).toEqual([80, 80]);
  });

  it('move up to be free, and down where there is no room above', () => {
    expect(places(label(80), label(78), label(75))).toEqual([80, 70, 60]);
    expect(places(label(5), label(7))).toEqual([5, 15]);
  });

  it('never leave the page', () => {
    expect(places(label(-30), label(500))).toEqual([5, 95]);
  });

  it('of two lines take the room of two lines', () => {
    expect(places(label(80), label(80, { lines: ['one', 'two'] }))).toEqual([80, 65]);
  });

  it('break between words, and a word that is too long stands alone', () => {
    expect(brokenInto('a day of work', 24, page)).toEqual(['a day', 'of', 'work']);
    expect(brokenInto('extraordinarily so', 30, page)).toEqual(['extraordinarily', 'so']);
  });
});
