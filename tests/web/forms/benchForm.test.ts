import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { typedOfAddress } from '../../../server/web/forms/address.js';
import { benchOfForm, formOf, readForm } from '../../../server/web/forms/benchForm.js';
import { canonicalBench } from '../../../server/web/forms/canonicalBench.js';
import { typedOf } from '../../../server/web/forms/typedBench.js';
import { anyBench } from '../../support/benchInputs.js';
import { someIds } from '../../support/someIds.js';

const read = (body: Record<string, string | string[]>) => benchOfForm(readForm(body), someIds);

describe('the bench page as a form', () => {
  it('reads ticks, shares, typed names and rooms into a bench', () => {
    const reading = read({
      'mix0.name': 'tram green',
      'mix0.ink': ['water-washable-oil', 'transparent-base'],
      'mix0.share.water-washable-oil': '27,5',
      'mix0.share.transparent-base': '62.5 %',
      'mix0.typedInk': 'grandad’s tin',
      'mix0.typedShare': '10',
      'mix0.additive': 'clove-oil',
      'mix0.percent.clove-oil': '',
      'mix0.dried': 'yes',
      surface: ['glass-slab', 'rubber-roller'],
      typedSurface: 'pasta machine, wine bottle',
      equipment: 'hotplate',
      hand: 'soap-water',
      handKnown: 'yes',
      roomLength: '5',
      roomWidth: '4',
      roomHeight: '2,8',
      air: 'window',
      people: '12',
      under16: 'yes',
      who: ['asthma'],
      region: 'uk',
      mixes: '2',
      do: 'sheet',
    });
    expect(reading).toEqual({
      bench: {
        region: 'uk',
        mixes: [
          {
            name: 'tram green',
            parts: [
              { ink: 'grandad’s tin', share: 10 },
              { ink: 'transparent-base', share: 62.5 },
              { ink: 'water-washable-oil', share: 27.5 },
            ],
            additives: [{ additive: 'clove-oil' }],
            dried: true,
          },
        ],
        surfaces: ['glass-slab', 'pasta machine', 'rubber-roller', 'wine bottle'],
        equipment: ['hotplate'],
        agentsAtHand: ['soap-water'],
        room: { lengthM: 5, widthM: 4, heightM: 2.8, air: 'window' },
        people: { count: 12, under16: true, flags: ['asthma'] },
      },
    });
  });

  it('lets ticked agents bind the plan only when it may take no others', () => {
    const ticked = { 'mix0.ink': 'oil-relief', hand: ['veg-oil'] };
    expect(read(ticked).bench?.agentsAtHand).toBeUndefined();
    expect(read({ ...ticked, handKnown: 'yes' }).bench?.agentsAtHand).toEqual(['veg-oil']);
    expect(read({ 'mix0.ink': 'x', handKnown: 'yes' }).bench?.agentsAtHand).toEqual([]);
  });

  it('counts an ink that has a share as there, ticked or not', () => {
    const reading = read({ 'mix0.share.oil-relief': '100' });
    expect(reading.bench?.mixes).toEqual([{ parts: [{ ink: 'oil-relief', share: 100 }] }]);
  });

  it.each([
    [{ 'mix0.ink': 'oil-relief', 'mix0.share.oil-relief': 'lots' }, 'mix0.share.oil-relief'],
    [{ 'mix1.typedInk': 'tin', 'mix1.typedShare': 'x' }, 'mix1.typedShare'],
    [{ 'mix0.ink': 'oil-relief', 'mix0.typedShare': '5' }, 'mix0.typedInk'],
    [{ 'mix0.additive': 'clove-oil', 'mix0.percent.clove-oil': '-1' }, 'mix0.percent.clove-oil'],
    [{ 'mix0.ink': 'oil-relief', roomM3: 'big' }, 'roomM3'],
    [{ 'mix0.ink': 'oil-relief', region: 'atlantis' }, 'region'],
    [{ 'mix0.ink': Array.from({ length: 10_000 }, (_, n) => `ink-${n}`) }, 'mix0.ink'],
    [{ surface: 'glass-slab' }, 'mix0.ink'],
  ])('puts the problem of %j beside its field', (body, field) => {
    expect(read(body as Record<string, string | string[]>).problems?.[0]?.field).toBe(field);
  });

  it('shows one more mix when asked, up to eight, and loses nothing that was typed', () => {
    const form = readForm({ 'mix0.typedInk': 'my tin', mixes: '1', do: 'more' });
    expect(form).toMatchObject({ wants: 'more', mixes: 2 });
    expect(form.values.get('mix0.typedInk')).toEqual(['my tin']);
    expect(readForm({ mixes: '99', do: 'more' }).mixes).toBe(8);
    expect(readForm({ mixes: 'lots' }).mixes).toBe(1);
    expect(readForm({ mixes: '1', 'mix3.name': 'x' }).mixes).toBe(4);
  });

  it('refuses a bench whose address would be too long', () => {
    const long = (letter: string) =>
      Array.from({ length: 8 }, (_, n) => `${letter.repeat(59)}${n}`);
    const body = Object.fromEntries(
      Array.from({ length: 8 }, (_, n) => [`mix${n}.ink`, long('abcdefgh'[n] ?? 'z')]),
    );
    expect(read({ ...body, surface: long('s') }).problems).toEqual([
      expect.objectContaining({ path: '', accepts: expect.stringContaining('4,000') as string }),
    ]);
  });

  it('filled in from a bench gives that bench when it is sent back', () => {
    fc.assert(
      fc.property(anyBench, (bench) => {
        const { values } = formOf(typedOf(bench), someIds);
        const body = Object.fromEntries([...values].map(([field, texts]) => [field, [...texts]]));
        expect(read(body)).toEqual({ bench: canonicalBench(bench) });
      }),
    );
  });

  it('filled in from a wrong address shows what the address said', () => {
    const { values } = formOf(typedOfAddress('mix=oil-relief:lots,my+tin:x&room=big'), someIds);
    expect(values.get('mix0.share.oil-relief')).toEqual(['lots']);
    expect(values.get('mix0.typedInk')).toEqual(['my tin']);
    expect(values.get('mix0.typedShare')).toEqual(['x']);
    expect(values.get('roomM3')).toEqual(['big']);
  });
});
