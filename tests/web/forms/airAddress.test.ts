import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AirInput } from '../../../server/reasoning/index.js';
import {
  airFormOf,
  canonicalAirAddress,
  parseAirAddress,
} from '../../../server/web/forms/airAddress.js';
import { canonicalAir } from '../../../server/web/forms/canonicalAir.js';
import { someIds } from '../../support/someIds.js';

const parse = (query: string) => parseAirAddress(query, someIds);
const problemsOf = (query: string) => parse(query).problems ?? [];
const inputOf = (query: string): AirInput => {
  const { input, problems } = parse(query);
  if (!input) throw new Error(JSON.stringify(problems));
  return input;
};

const perhaps = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const decimals = (low: number, high: number, fine = 1000) =>
  fc.integer({ min: low * fine, max: high * fine }).map((value) => value / fine);
const name = fc.constantFrom('white-spirit', 'acetone', 'my tin', 'grey+bottle', 'Öl & Co');

const aUse = fc
  .record({
    isSubstance: fc.boolean(),
    name,
    ml: decimals(0, 100_000),
    startMin: perhaps(decimals(0, 1440)),
    minutes: perhaps(decimals(1, 1440)),
    evaporates: perhaps(decimals(0, 1, 100_000)),
    lidded: perhaps(fc.boolean()),
  })
  .map(({ isSubstance, name: what, ...use }) => ({
    ...(isSubstance ? { substance: what } : { agent: what }),
    ...use,
  }));

const aSize = fc.oneof(
  fc.record({ volumeM3: decimals(1, 1000) }),
  fc.record({ lengthM: decimals(1, 99), widthM: decimals(1, 99), heightM: decimals(1, 9) }),
);
const someAir = fc.record({
  air: perhaps(fc.constantFrom('window', 'gale')),
  airChangesPerHour: perhaps(decimals(0, 200)),
  fanM3PerHour: perhaps(decimals(0, 10_000)),
  mixingFactor: perhaps(decimals(1, 10)),
  temperatureC: perhaps(decimals(-20, 60)),
});

/** Any day that can be said in an address. */
const aDay: fc.Arbitrary<AirInput> = fc.record({
  region: perhaps(fc.constantFrom('uk', 'us', 'other')),
  room: fc.tuple(aSize, someAir).map(([size, air]) => ({ ...size, ...air })),
  uses: fc.array(aUse, { maxLength: 12 }),
  zones: perhaps(fc.constantFrom<1 | 2>(1, 2)),
  shiftHours: perhaps(decimals(1, 20)),
});

/** Without what is not there, so that two ways of saying nothing are one. */
const plain = (day: AirInput): unknown => JSON.parse(JSON.stringify(day));

describe('the address of a room and its uses', () => {
  it('gives the same day back when it is parsed, whatever the day', () => {
    fc.assert(
      fc.property(aDay, (day) => {
        expect(parse(canonicalAirAddress(day))).toEqual({ input: plain(canonicalAir(day)) });
      }),
      { numRuns: 500 },
    );
  });

  it('is the same for the same uses in another order', () => {
    fc.assert(
      fc.property(aDay, (day) => {
        const turned = { ...day, uses: [...day.uses].reverse() };
        expect(canonicalAirAddress(turned)).toBe(canonicalAirAddress(day));
      }),
    );
  });

  it('stays as it is when it is read and written again, whatever was sent', () => {
    const bits = fc.constantFrom(
      ...['use=', 'room=', 'in=', '&', ',', ':', '/', '@', '~lid', '%', '+', '60', '2', 'goo'],
      ...['what0=', 'ml0=', 'start0=', 'min0=', 'share0=', 'lid0=', 'm3=', 'zones=', 'shift='],
    );
    const soup = fc.array(fc.oneof(bits, fc.string({ unit: 'binary', maxLength: 4 })));
    fc.assert(
      fc.property(soup, (parts) => {
        const { input, problems } = parse(parts.join(''));
        expect(Boolean(input) !== Boolean(problems)).toBe(true);
        if (!input) return;
        const address = canonicalAirAddress(input);
        expect(canonicalAirAddress(inputOf(address))).toBe(address);
      }),
      { numRuns: 2000 },
    );
  });

  it('can be read by people, and says what each use does', () => {
    const query =
      'in=uk&room=5x4x3&air=window&temp=25' +
      '&use=white-spirit:40~lid,substance.acetone:10@10+15,my+tin:2.5@30/50&zones=1&shift=12';
    expect(inputOf(query)).toEqual({
      region: 'uk',
      room: { lengthM: 5, widthM: 4, heightM: 3, air: 'window', temperatureC: 25 },
      uses: [
        { agent: 'white-spirit', ml: 40, lidded: true },
        { substance: 'acetone', ml: 10, startMin: 10, minutes: 15 },
        { agent: 'my tin', ml: 2.5, startMin: 30, evaporates: 0.5 },
      ],
      zones: 1,
      shiftHours: 12,
    });
    expect(canonicalAirAddress(inputOf(query))).toBe(query);
  });

  it('takes minutes without a beginning, and uses under one key or several', () => {
    expect(inputOf('room=60&use=acetone:5+20&use=acetone:5').uses).toEqual([
      { agent: 'acetone', ml: 5, minutes: 20 },
      { agent: 'acetone', ml: 5 },
    ]);
  });

  it('counts the same use twice when it is said twice', () => {
    expect(inputOf('room=60&use=acetone:5,acetone:5').uses).toHaveLength(2);
  });

  it('leaves out what goes without saying', () => {
    expect(canonicalAirAddress(inputOf('room=60&use=acetone:5@0/100&zones=2&shift=8'))).toBe(
      'room=60&use=acetone:5',
    );
  });

  it('may say nothing at all, or a room without a use', () => {
    expect(inputOf('')).toEqual({ room: {}, uses: [] });
    expect(inputOf('air=window')).toEqual({ room: { air: 'window' }, uses: [] });
  });
});

describe('the form of the page, sent as a query', () => {
  it('means the same as the address it leads to', () => {
    const form =
      'in=us&air=window&m3=60&l=&w=&h=&ach=&fan=&mixing=&temp=&zones=2&shift=' +
      '&what0=white-spirit&ml0=40&start0=&min0=15&share0=80&lid0=yes' +
      '&what1=substance.acetone&ml1=2%2C5&start1=20&min1=&share1=&what2=&ml2=&start2=&min2=&share2=';
    expect(canonicalAirAddress(inputOf(form))).toBe(
      'in=us&room=60&air=window&use=white-spirit:40+15/80~lid,substance.acetone:2.5@20',
    );
  });

  it('keeps uses of the address and adds its rows to them', () => {
    expect(inputOf('room=60&use=acetone:5&what3=ethanol&ml3=7').uses).toEqual([
      { agent: 'acetone', ml: 5 },
      { agent: 'ethanol', ml: 7 },
    ]);
  });

  it('puts a size that was typed before one of the address', () => {
    expect(inputOf('room=60&m3=80').room).toEqual({ volumeM3: 80 });
  });

  it('comes back as it was typed, without its empty rows', () => {
    const form = airFormOf('in=atlantis&m3=big&fan=1,200&what0=&ml0=&what2=acetone&ml2=lots&lid2=');
    expect(form).toMatchObject({
      region: 'atlantis',
      room: { volumeM3: 'big', fanM3PerHour: '1,200' },
      uses: [{ what: 'acetone', ml: 'lots', startMin: '', lidded: false }],
    });
  });

  it('shows an address in its fields', () => {
    const { room, uses } = airFormOf('room=5x4x3&use=white-spirit:40@10+15/50~lid');
    expect(room).toMatchObject({ lengthM: '5', widthM: '4', heightM: '3', volumeM3: '' });
    expect(uses).toEqual([
      {
        what: 'white-spirit',
        ml: '40',
        startMin: '10',
        minutes: '15',
        evaporates: '50',
        lidded: true,
      },
    ]);
  });
});

describe('an address of the air that is wrong', () => {
  it.each([
    ['an unknown region', 'in=atlantis', '/region', 'in', /^one of uk/],
    ['no size but a use', 'use=acetone:5', '/room', 'm3', /volume, or length/],
    ['a side that lacks', 'l=5&w=4', '/room', 'l', /all three/],
    ['a room too small', 'room=0', '/room/volumeM3', 'm3', /from 1 to 100,000/],
    ['a number read two ways', 'room=60&fan=1,200', '/room/fanM3PerHour', 'fan', /0 to 1,000,000/],
    ['more than a tanker', 'room=60&use=acetone:10000001', '/uses/0/ml', 'ml0', /10,000,000 ml/],
    ['no amount', 'room=60&what0=acetone', '/uses/0/ml', 'ml0', /ml$/],
    ['an amount of nothing', 'room=60&ml1=5', '/uses/0/agent', 'what0', /agent/],
    ['a substance without name', 'room=60&use=substance.:5', '/uses/0/agent', 'what0', /agent/],
    ['a late beginning', 'room=60&use=acetone:5@1441', '/uses/0/startMin', 'start0', /0 to 1,440/],
    ['no time at all', 'room=60&use=acetone:5+0', '/uses/0/minutes', 'min0', /0.1 to 1,440/],
    ['a share above all', 'room=60&use=acetone:5/101', '/uses/0/evaporates', 'share0', /percent/],
    ['three zones', 'zones=3', '/zones', 'zones', /^1 or 2$/],
    ['a shift of a day', 'shift=24', '/shiftHours', 'shift', /1 to 20 hours/],
  ])('says so beside its field: %s', (_, query, path, field, accepts) => {
    expect(problemsOf(query)).toEqual([
      {
        path,
        field,
        got: expect.any(String) as string,
        accepts: expect.stringMatching(accepts) as string,
      },
    ]);
  });

  it('is told of all that is wrong at once, each in its row', () => {
    const fields = problemsOf('in=x&room=60&use=acetone:a,ethanol:5,acetone:b').map(
      ({ field }) => field,
    );
    expect(fields).toEqual(['in', 'ml0', 'ml2']);
  });

  it('holds no more uses than are accepted, and no more letters', () => {
    const uses = (many: number, use: string) => `room=60&use=${Array(many).fill(use).join(',')}`;
    expect(problemsOf(uses(51, 'a:1'))[0]).toMatchObject({ path: '/uses', got: '51' });
    expect(problemsOf(uses(20, 'a:1'))).toEqual([]);
    expect(problemsOf(uses(50, 'a'.repeat(90)))[0]?.accepts).toMatch(/4,000 letters/);
    const rows = Array.from({ length: 21 }, (_, row) => `what${row}=a&ml${row}=1`).join('&');
    expect(problemsOf(`room=60&${rows}`)[0]).toMatchObject({ path: '/uses', got: '21' });
  });

  it('is too long as well when only the one address of its day would be', () => {
    const uses = Array(20)
      .fill(`${'ä'.repeat(59)}:1`)
      .join(',');
    expect(problemsOf(`room=60&use=${uses}`)[0]?.accepts).toMatch(/4,000 letters/);
  });
});
