import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput } from '../../../server/reasoning/index.js';
import { benchToAddress, parseAddress } from '../../../server/web/forms/address.js';
import { canonicalBench } from '../../../server/web/forms/canonicalBench.js';
import { anyBench } from '../../support/benchInputs.js';
import { someIds } from '../../support/someIds.js';

const problemsOf = (query: string) => parseAddress(query, someIds).problems ?? [];

describe('the address of a bench', () => {
  it('gives the same bench back when it is parsed, whatever the bench', () => {
    fc.assert(
      fc.property(anyBench, (bench) => {
        expect(parseAddress(benchToAddress(bench), someIds)).toEqual({
          bench: canonicalBench(bench),
        });
      }),
      { numRuns: 500 },
    );
  });

  it('is the same for the same bench in another order, with things named twice', () => {
    const twice = <T>(many: readonly T[] | undefined): readonly T[] => [
      ...[...(many ?? [])].reverse(),
      ...(many ?? []),
    ];
    fc.assert(
      fc.property(anyBench, (bench) => {
        const shuffled: BenchInput = {
          ...bench,
          mixes: [...bench.mixes].reverse().map((mix) => ({ ...mix, parts: twice(mix.parts) })),
          surfaces: twice(bench.surfaces),
          ...(bench.equipment && { equipment: twice(bench.equipment) }),
        };
        expect(benchToAddress(shuffled)).toBe(benchToAddress(bench));
      }),
    );
  });

  it('reads the grammar of the README, and writes it so that people can read it', () => {
    const query =
      'in=uk&mix=tram+green@transparent-base:70,water-washable-oil:30/cobalt-drier:2,clove-oil~dried;glass-slab' +
      '&mix=oil-relief&on=glass-slab,lino-block&near=etching-press&hand=soap-water,veg-oil' +
      '&use=white-spirit:40&room=5x4x3&ach=4&people=12&under16=yes&who=alone,asthma';
    const { bench } = parseAddress(query, someIds);
    expect(bench).toEqual({
      region: 'uk',
      mixes: [
        {
          name: 'tram green',
          parts: [
            { ink: 'transparent-base', share: 70 },
            { ink: 'water-washable-oil', share: 30 },
          ],
          additives: [{ additive: 'clove-oil' }, { additive: 'cobalt-drier', percent: 2 }],
          dried: true,
          on: ['glass-slab'],
        },
        { parts: [{ ink: 'oil-relief' }] },
      ],
      surfaces: ['glass-slab', 'lino-block'],
      equipment: ['etching-press'],
      agentsAtHand: ['soap-water', 'veg-oil'],
      uses: [{ agent: 'white-spirit', ml: 40 }],
      room: { lengthM: 5, widthM: 4, heightM: 3, airChangesPerHour: 4 },
      people: { count: 12, under16: true, flags: ['alone', 'asthma'] },
    });
    expect(benchToAddress(bench as BenchInput)).toBe(
      query.replace('cobalt-drier:2,clove-oil', 'clove-oil,cobalt-drier:2'),
    );
  });

  it('keeps a list that is empty apart from a list that is not there', () => {
    expect(parseAddress('mix=oil-relief&hand=', someIds).bench?.agentsAtHand).toEqual([]);
    expect(parseAddress('mix=oil-relief', someIds).bench?.agentsAtHand).toBeUndefined();
  });

  it('ignores words it does not know, and takes the last of what can be said once', () => {
    const { bench } = parseAddress('mix=oil-relief&in=us&in=UK&ref=poster', someIds);
    expect(bench).toEqual({
      region: 'uk',
      mixes: [{ parts: [{ ink: 'oil-relief' }] }],
      surfaces: [],
    });
  });

  it('turns structure letters and control codes in typed text into spaces and cuts it at 60', () => {
    const typed = 'my%20%00ink%E2%80%8B%0Amix'.concat('y'.repeat(80));
    const { bench } = parseAddress(`mix=${typed}`, someIds);
    const ink = bench?.mixes[0]?.parts[0]?.ink ?? '';
    expect(ink).toMatch(/^my ink mixy+$/);
    expect(ink).toHaveLength(60);
  });

  it('answers any text at all with a bench or with problems, and never throws', () => {
    const marks = fc.constantFrom('mix=', '&', ',', ':', '/', ';', '@', '~', '%', '+', 'on=', '10');
    const soup = fc.array(fc.oneof(marks, fc.string({ unit: 'binary', maxLength: 5 })));
    fc.assert(
      fc.property(soup, (bits) => {
        const { bench, problems } = parseAddress(bits.join(''), someIds);
        expect(Boolean(bench) !== Boolean(problems)).toBe(true);
        if (bench) expect(parseAddress(benchToAddress(bench), someIds)).toEqual({ bench });
      }),
      { numRuns: 1000 },
    );
  });
});

describe('an address that is wrong', () => {
  it.each([
    ['an unknown region', 'mix=oil-relief&in=atlantis', 'region', /^one of uk, us, other$/],
    ['a negative share', 'mix=oil-relief:-5', 'mix0.share.oil-relief', /from 0 to 100/],
    ['a letter for a number', 'mix=oil-relief:ten', 'mix0.share.oil-relief', /a number/],
    ['a percent above 100', 'mix=oil-relief/clove-oil:101', 'mix0.percent.clove-oil', /0 to 100/],
    ['a share of an unlisted ink', 'mix=my+ink:x', 'mix0.typedShare', /a number/],
    ['shares that are not 100', 'mix=oil-relief:50,transparent-base:40', 'mix0.ink', /up to 100$/],
    [
      'shares above 100, one open',
      'mix=oil-relief:101,transparent-base',
      'mix0.share.oil-relief',
      /100/,
    ],
    ['a sum above 100, one open', 'mix=oil-relief:60,a:60,b', 'mix0.ink', /no more than 100/],
    ['two sides of a room', 'mix=oil-relief&room=5x4', 'roomLength', /all three/],
    ['half a person', 'mix=oil-relief&people=1.5', 'people', /whole number/],
    ['a number with two readings', 'mix=oil-relief&fan=1,200', 'fan', /a number/],
  ])('tells %s at its field with what is accepted', (_, query, field, accepts) => {
    expect(problemsOf(query)).toEqual([expect.objectContaining({ field })]);
    expect(problemsOf(query)[0]?.accepts).toMatch(accepts);
  });

  it('is one problem when it holds 10,000 parts or is longer than 4,000 letters', () => {
    const parts = Array.from({ length: 13 }, () => 'a').join(',');
    expect(problemsOf(`mix=${parts}`)).toEqual([
      { path: '/mixes/0/parts', field: 'mix0.ink', got: '13', accepts: 'up to 12 inks in one mix' },
    ]);
    expect(problemsOf(`mix=${'a,'.repeat(10_000)}`)).toEqual([
      expect.objectContaining({ path: '', got: '20,004 letters' }),
    ]);
  });

  it.each([
    ['yes', true],
    ['3', true],
    ['no', undefined],
    ['0', undefined],
  ])('takes "%s" for whether anyone is under 16', (under16, answer) => {
    const { bench } = parseAddress(`mix=oil-relief&people=2&under16=${under16}`, someIds);
    expect(bench?.people?.under16).toBe(answer);
  });

  it('tells what it takes for yes and no, and what has no name', () => {
    expect(problemsOf('mix=oil-relief&under16=some')[0]).toMatchObject({ field: 'under16' });
    expect(problemsOf('mix=oil-relief/%00')[0]).toMatchObject({ field: 'mix0.typedAdditive' });
    expect(problemsOf('mix=oil-relief&use=%00:5')[0]).toMatchObject({ path: '/uses/0/agent' });
    const additives = Array.from({ length: 13 }, (_, n) => `a${n}`).join(',');
    expect(problemsOf(`mix=oil-relief/${additives}`)[0]).toMatchObject({ field: 'mix0.additive' });
    const mixes = Array.from({ length: 9 }, () => 'mix=oil-relief').join('&');
    expect(problemsOf(mixes)[0]).toMatchObject({ path: '/mixes', accepts: 'up to 8 mixes' });
    const uses = Array.from({ length: 21 }, (_, n) => `a${n}:1`).join(',');
    expect(problemsOf(`mix=oil-relief&use=${uses}`)[0]).toMatchObject({ path: '/uses' });
  });

  it('counts an extender among the parts when that makes the mix whole', () => {
    const { bench } = parseAddress('mix=oil-relief:80/transparent-base:20,clove-oil', someIds);
    expect(bench?.mixes).toEqual([
      {
        parts: [
          { ink: 'oil-relief', share: 80 },
          { ink: 'transparent-base', share: 20 },
        ],
        additives: [{ additive: 'clove-oil' }],
      },
    ]);
  });

  it('tells at most twenty problems at a time', () => {
    const mixes = Array.from({ length: 8 }, () => 'mix=a:x,b:x,c:x,d:x').join('&');
    expect(problemsOf(mixes)).toHaveLength(20);
  });
});

describe('an ink that is named twice', () => {
  it.each([
    ['oil-relief:100,oil-relief:40', 'oil-relief:100'],
    ['oil-relief:60,transparent-base:40,oil-relief', 'oil-relief:60,transparent-base:40'],
    ['oil-relief/clove-oil:2,clove-oil:5,clove-oil', 'oil-relief/clove-oil:5'],
    ['oil-relief:70,transparent-base:30/transparent-base:20', 'oil-relief:70,transparent-base:30'],
  ])('keeps its larger figure: %s is %s', (twice, once) => {
    const { bench } = parseAddress(`mix=${twice}`, someIds);
    expect(benchToAddress(bench as BenchInput)).toBe(`mix=${once}`);
  });

  it.each(['oil-relief:50', 'oil-relief:50,oil-relief:50'])(
    'is weighed once: %s does not add up',
    (mix) => {
      expect(problemsOf(`mix=${mix}`)[0]?.got).toBe('shares that add up to 50');
    },
  );

  it('still has its wrong figure told', () => {
    expect(problemsOf('mix=oil-relief:x,oil-relief:100')[0]?.got).toBe('x');
  });

  it('gives an address that can be read again, whatever is named and how often', () => {
    const ink = fc.constantFrom('oil-relief', 'transparent-base', 'my+tin');
    const much = fc.constantFrom('', ':0', ':20', ':30', ':50', ':80', ':100');
    const one = fc.tuple(ink, much).map((pair) => pair.join(''));
    const some = fc.array(one, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(some, some, (parts, additives) => {
        const { bench } = parseAddress(`mix=${parts.join()}/${additives.join()}`, someIds);
        if (bench) expect(parseAddress(benchToAddress(bench), someIds)).toEqual({ bench });
      }),
      { numRuns: 1000 },
    );
  });

  it('is refused when only its longer canonical spelling would not be read again', () => {
    const query = `mix=oil-relief&on=${Array.from({ length: 40 }, (_, n) => `${'?'.repeat(50)}${n}`).join()}`;
    expect(query.length).toBeLessThan(4000);
    expect(problemsOf(query)[0]?.accepts).toMatch(/4,000 letters/);
  });
});

describe('shares of a mix', () => {
  it.each([
    ['add up to 100 within half a percent', 'oil-relief:33.3,a:33.3,b:33.3'],
    ['may leave one open', 'oil-relief:60,a'],
    ['may count an extender given as an additive apart', 'oil-relief:100/transparent-base:20'],
    ['may count an extender given as an additive in', 'oil-relief:80/transparent-base:20'],
  ])('%s', (_, mix) => {
    expect(problemsOf(`mix=${mix}`)).toEqual([]);
  });
});
