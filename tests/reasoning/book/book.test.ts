import { describe, expect, it } from 'vitest';
import { makeBook, resolveId } from '../../../server/reasoning/book/book.js';
import { makeReasoner } from '../../../server/reasoning/index.js';
import { book } from '../../support/everyMix.js';
import { catalogue } from '../../support/rules.js';

const bit = (agent: string): number => 1 << (book.agentIndex.get(agent) ?? Number.NaN);

describe('the book', () => {
  it('knows a thing by its id, its name and its short name, however they are typed', () => {
    expect(resolveId(book, 'ink', 'oil-relief')).toBe('oil-relief');
    expect(resolveId(book, 'ink', '  Oil-based   RELIEF ink ')).toBe('oil-relief');
    expect(resolveId(book, 'ink', 'oil relief ink')).toBe('oil-relief');
    expect(resolveId(book, 'agent', 'White spirit (mineral spirits)')).toBe('white-spirit');
    expect(resolveId(book, 'agent', 'chlorine bleach')).toBe('bleach');
    expect(resolveId(book, 'additive', 'Oil extender')).toBe('transparent-base');
  });

  it('leaves what it does not know as it was typed, tidied', () => {
    expect(resolveId(book, 'ink', '  My   Tin ')).toBe('My Tin');
  });

  it('leaves out of what a surface stands whatever the table or the studio says does harm', () => {
    const lino = book.surfaces.get('lino-block');
    expect((lino?.stands ?? 0) & bit('acetone')).toBe(0);
    for (const pair of catalogue.pairs) {
      const stands = (book.surfaces.get(pair.surface)?.stands ?? 0) & bit(pair.agent);
      const harms = pair.grade === 'harms' || pair.studioGrade === 'harms';
      expect(stands === 0, pair.id).toBe(harms);
    }
  });

  it('lets an oil film stay on bare iron and nowhere else', () => {
    const iron = book.surfaces.get('iron-press-bed')?.leavesClean ?? 0;
    const glass = book.surfaces.get('glass-slab')?.leavesClean ?? 0;
    expect(iron & bit('veg-oil')).not.toBe(0);
    expect(glass & bit('veg-oil')).toBe(0);
    expect(glass & bit('soap-water')).not.toBe(0);
    expect(iron & bit('alkaline-wash')).toBe(0);
  });

  it('has no way off a surface that everything harms', () => {
    const pairs = catalogue.pairs.map((pair) =>
      pair.surface === 'glass-slab' ? { ...pair, grade: 'harms' as const } : pair,
    );
    const fragile = { ...catalogue, pairs };
    expect(makeBook(fragile).surfaces.get('glass-slab')).toMatchObject({ stands: 0, brief: 0 });
    const mixes = [{ parts: [{ ink: 'oil-relief' }] }];
    const [route] = makeReasoner(fragile).sheet({ mixes, surfaces: ['glass-slab'] }).plan.routes;
    expect(route).toMatchObject({ stuck: 'all-harm', passes: [] });
  });

  it('finds the place of a level on its scale, and none for a level that is not on it', () => {
    expect(book.heightOf('air', 'room-air')).toBe(0);
    expect(book.heightOf('air', 'not-in-this-room')).toBe(5);
    expect(book.heightOf('air', 'splash-gloves')).toBe(-1);
  });
});
