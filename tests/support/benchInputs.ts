import fc from 'fast-check';
import type { BenchInput, MixInput } from '../../server/reasoning/index.js';
import { NUMBERS, type NumberName } from '../../server/web/forms/limits.js';

const kebab = fc.stringMatching(/^[a-z]{1,8}(-[a-z0-9]{1,6}){0,2}$/);
/** What people type: any letters at all, accents, dots and signs among them. */
const typed = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 20 })
  .map((text) => text.normalize('NFC'))
  .filter((text) => /^[\p{L}\p{N}\p{P}\p{S} ]+$/u.test(text) && !/[,:/;@~]/.test(text))
  .map((text) => text.replace(/ +/g, ' ').trim())
  .filter((text) => text !== '');
const id = fc.oneof({ weight: 4, arbitrary: kebab }, { weight: 1, arbitrary: typed });
const ids = fc.uniqueArray(id, { maxLength: 6 });

const number = (name: NumberName) =>
  fc
    .integer({ min: NUMBERS[name].low * 10, max: NUMBERS[name].high * 10 })
    .map((tenths) => tenths / 10);

const maybe = { requiredKeys: [] as never[] };

const parts = fc.oneof(
  fc.uniqueArray(fc.record({ ink: id }), {
    maxLength: 5,
    minLength: 1,
    selector: (one) => one.ink,
  }),
  fc.uniqueArray(id, { minLength: 2, maxLength: 2 }).chain(([one, other]) =>
    fc.integer({ min: 0, max: 1000 }).map((tenths) => [
      { ink: one ?? '', share: tenths / 10 },
      { ink: other ?? '', share: (1000 - tenths) / 10 },
    ]),
  ),
);

const mix: fc.Arbitrary<MixInput> = fc
  .record(
    {
      name: typed,
      parts,
      additives: fc.uniqueArray(
        fc.record({ additive: id, percent: number('percent') }, { requiredKeys: ['additive'] }),
        { minLength: 1, maxLength: 4, selector: (one) => one.additive },
      ),
      dried: fc.constant(true),
      on: fc.uniqueArray(id, { minLength: 1, maxLength: 3 }),
    },
    { requiredKeys: ['parts'] },
  )
  .map((one) => one as MixInput);

const room = fc.oneof(
  fc.record({ volumeM3: number('volumeM3'), air: kebab }, maybe),
  fc.record({
    lengthM: number('lengthM'),
    widthM: number('widthM'),
    heightM: number('heightM'),
    airChangesPerHour: number('airChangesPerHour'),
  }),
  fc.record({ fanM3PerHour: number('fanM3PerHour'), temperatureC: number('temperatureC') }),
);

/** Any bench that can be typed, in any order. */
export const anyBench: fc.Arbitrary<BenchInput> = fc
  .record(
    {
      region: fc.constantFrom('uk', 'us'),
      mixes: fc.array(mix, { minLength: 1, maxLength: 3 }),
      surfaces: ids,
      equipment: fc.uniqueArray(id, { minLength: 1, maxLength: 4 }),
      agentsAtHand: ids,
      uses: fc.uniqueArray(fc.record({ agent: id, ml: number('ml') }), {
        minLength: 1,
        maxLength: 3,
        selector: (one) => one.agent,
      }),
      room: room.filter((one) => Object.keys(one).length > 0),
      people: fc.record({
        count: fc.integer({ min: 1, max: 500 }),
        under16: fc.constant(true),
        flags: fc.uniqueArray(id, { minLength: 1, maxLength: 3 }),
      }),
    },
    { requiredKeys: ['mixes', 'surfaces'] },
  )
  .map((one) => one as BenchInput);
