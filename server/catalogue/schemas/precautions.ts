import { z } from 'zod';
import {
  SCALES,
  type Band,
  type BandRules,
  type NeverTogether,
  type RagsFor,
  type Rule,
  type Scale,
  type Stream,
} from '../../reasoning/index.js';
import { Id, Ids, LowHigh, Text, row } from './row.js';

const ScaleName = z.enum(SCALES);

export const ScaleRow: z.ZodType<Scale> = z.strictObject({
  ...row,
  id: ScaleName,
  name: Text,
  levels: z.array(z.strictObject({ id: Id, name: Text, line: z.string() })).min(1),
});

const Rank = z.number().int().min(0);

/** What bandRules holds beside its list of bands. */
export const BandFigures: z.ZodType<Omit<BandRules, 'bands'>> = z.strictObject({
  vapour: z.array(z.strictObject({ below: z.number().positive(), rank: Rank })).min(1),
  nonVolatileBelowPa: z.number().min(0),
  noLimitRank: Rank,
  fire: z.strictObject({ '1': Rank, '2': Rank, '3': Rank, '4': Rank, none: Rank }),
  fireCodes: z.record(z.string(), z.enum(['1', '2', '3', '4'])),
  health: z.record(z.string(), Rank),
});

export const BandRow: z.ZodType<Band> = z.strictObject({
  ...row,
  band: Rank,
  name: Text,
  require: z.partialRecord(ScaleName.exclude(['rags']), z.string()),
});

export const RuleRow: z.ZodType<Rule> = z
  .strictObject({
    ...row,
    when: Ids.default([]),
    anyOf: Ids.default([]),
    require: z.partialRecord(ScaleName, z.string()).default({}),
    streams: Ids.default([]),
    lines: Ids.default([]),
    name: Text,
    why: Text,
  })
  .refine(({ when, anyOf }) => when.length + anyOf.length > 0, {
    error: 'a condition: tags in when, anyOf or both (always, if it always holds)',
  })
  .refine(
    ({ require, streams, lines }) =>
      Object.keys(require).length + streams.length + lines.length > 0,
    { error: 'something to require, a stream or a line' },
  );

export const RagsForRow: z.ZodType<RagsFor> = z.strictObject({
  ...row,
  small: LowHigh,
  medium: LowHigh,
  large: LowHigh,
});

export const StreamRow: z.ZodType<Stream> = z.strictObject({
  ...row,
  name: Text,
  level: z.string(),
  selfHeating: z.boolean(),
  container: Text,
  emptied: Text,
  line: z.string(),
});

export const NeverTogetherRow: z.ZodType<NeverTogether> = z.strictObject({
  ...row,
  one: Ids.min(1),
  other: Ids.min(1),
  makes: Text,
  words: Text,
});
