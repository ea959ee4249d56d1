import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { aRulesFolder, problemsOf } from '../support/rulesFolder.js';

interface Break {
  readonly when: string;
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** A second change in the same file. */
  readonly and?: readonly [string, string];
  /** Words on the line that the problem names; the changed ones when absent. */
  readonly on?: string;
  readonly field: string;
  readonly found: string;
  readonly accepts?: string;
}

const BREAKS: readonly Break[] = [
  {
    when: 'an ink and an additive go by one id',
    file: 'additives.yaml',
    from: '- id: cobalt-drier',
    to: `- { id: oil-relief, name: A, shortName: A, purpose: x, marks: [], substances: [], doseHow: read,
    clean: x, rags: x, how: common practice, sources: [practice] }
- id: cobalt-drier`,
    on: 'id: oil-relief',
    field: 'additives.oil-relief.id',
    found: '"oil-relief"',
    accepts: 'an id that no ink or extender has',
  },
  {
    when: 'an ink is lifted by an agent that must never touch it',
    file: 'inks.yaml',
    from: 'never: []',
    to: 'never: [veg-oil]',
    on: 'liftsWet',
    field: 'inks.oil-relief.liftsWet[0]',
    found: '"veg-oil"',
    accepts: 'an agent that never does not name',
  },
  {
    when: 'an additive is lifted by an agent that must never touch it',
    file: 'additives.yaml',
    from: 'lifts: [white-spirit]',
    to: 'lifts: [veg-oil, white-spirit]\n  never: [white-spirit]',
    on: 'lifts',
    field: 'additives.cobalt-drier.lifts[1]',
    found: '"white-spirit"',
  },
  {
    when: 'an agent id is unknown',
    file: 'inks.yaml',
    from: 'liftsWet: [veg-oil, white-spirit]',
    to: 'liftsWet: [white-spirit, veg-oyl]',
    field: 'inks.oil-relief.liftsWet[1]',
    found: '"veg-oyl"',
    accepts: 'an agent id (veg-oil, white-spirit)',
  },
  {
    when: 'an id deep in a row is unknown',
    file: 'usual-benches.yaml',
    from: 'ink: oil-relief',
    to: 'ink: oil-releif',
    field: 'usual-benches.lino.bench.mixes[0].parts[0].ink',
    found: '"oil-releif"',
    accepts: 'an ink id (oil-relief)',
  },
  {
    when: 'a source is unknown',
    file: 'agents.yaml',
    from: 'sources: [practice]',
    to: 'sources: [practise]',
    field: 'agents.veg-oil.sources[0]',
    found: '"practise"',
    accepts: 'a source id (practice, handbook)',
  },
  {
    when: 'a row names no source',
    file: 'marks.yaml',
    from: 'sources: [practice]',
    to: 'sources: []',
    field: 'marks.plain-oil.sources',
    found: '[]',
    accepts: 'at least one source id',
  },
  {
    when: 'a row says it was read, but in nothing that was read',
    file: 'people.yaml',
    from: 'how: common practice',
    to: 'how: read',
    on: 'sources:',
    field: 'people.alone.sources',
    found: '["practice"]',
  },
  {
    when: 'the source of an exposure limit is unknown',
    file: 'substances.yaml',
    from: 'source: handbook',
    to: 'source: hearsay',
    field: 'substances.spirit.limits[0].source',
    found: '"hearsay"',
  },
  {
    when: 'a column is missing',
    file: 'surfaces.yaml',
    from: '  shortName: Slab\n',
    to: '',
    on: 'id: glass-slab',
    field: 'surfaces.glass-slab.shortName',
    found: 'nothing',
    accepts: 'a text (quote it if it looks like a number)',
  },
  {
    when: 'a value is of the wrong type',
    file: 'agents.yaml',
    from: 'stage: 1',
    to: 'stage: first',
    field: 'agents.veg-oil.stage',
    found: '"first"',
    accepts: 'a number',
  },
  {
    when: 'a value is none of those there are',
    file: 'surfaces.yaml',
    from: 'oilFilm: may-stay',
    to: 'oilFilm: perhaps',
    field: 'surfaces.knife.oilFilm',
    found: '"perhaps"',
    accepts: 'may-stay | must-go',
  },
  {
    when: 'a range is upside down',
    file: 'inks.yaml',
    from: '{ low: 5, high: 30 }',
    to: '{ low: 50, high: 30 }',
    field: 'inks.oil-relief.usualPercent',
    found: '{"low":50,"high":30}',
    accepts: 'low no higher than high',
  },
  {
    when: 'a column is not one of ours',
    file: 'equipment.yaml',
    from: 'drawing: hotplate',
    to: 'drawing: hotplate\n  colour: red',
    on: 'colour: red',
    field: 'equipment.hotplate.colour',
    found: '"colour"',
    accepts: 'only the columns that rules/README.md names',
  },
  {
    when: 'a file has a part that is not one of ours',
    file: 'never-together.yaml',
    from: 'pairs:',
    to: 'extras: []\npairs:',
    on: 'extras',
    field: 'never-together.extras',
    found: '"extras"',
  },
  {
    when: 'a mapping has a key that is not one of ours',
    file: 'precautions.yaml',
    from: 'require: { air: room-air }',
    to: 'require: { hats: least }',
    field: 'precautions.rules.every-bench.require.hats',
    found: '"hats"',
    accepts: 'only the columns that rules/README.md names',
  },
  {
    when: 'an id is not in kebab case',
    file: 'lines.yaml',
    from: 'id: rags-wet',
    to: 'id: rags_wet\n  phase: rags-and-waste\n  rank: 2\n  head: Wet.\n  rest: Now.\n- id: rags-wet',
    on: 'rags_wet',
    field: 'lines.rags_wet.id',
    found: '"rags_wet"',
    accepts: 'lower-case words joined by hyphens',
  },
  {
    when: 'two rows have one id',
    file: 'equipment.yaml',
    from: '- id: hotplate',
    to: [
      '- { id: hotplate, name: A, shortName: A, marks: [], drawing: a, how: from memory, sources: [practice] }',
      '- id: hotplate',
    ].join('\n'),
    on: '- id: hotplate',
    field: 'equipment.hotplate.id',
    found: '"hotplate"',
    accepts: 'an id that no other row has',
  },
  {
    when: 'a rule asks for a mark that is not there',
    file: 'precautions.yaml',
    from: 'when: [mark.plain-oil]',
    to: 'when: [mark.plain-oyl]',
    field: 'precautions.rules.oil-rags.when[0]',
    found: '"mark.plain-oyl"',
    accepts: 'mark. and an id (plain-oil, ammonia, hypochlorite)',
  },
  {
    when: 'a tag is of no kind we have',
    file: 'precautions.yaml',
    from: 'state.dried,',
    to: 'weather.wet,',
    field: 'precautions.rules.oil-rags.anyOf[3]',
    found: '"weather.wet"',
  },
  {
    when: 'a tag has no kind at all',
    file: 'never-together.yaml',
    from: 'one: [mark.hypochlorite]',
    to: 'one: [hypochlorite]',
    field: 'never-together.pairs.bleach-with-ammonia.one[0]',
    found: '"hypochlorite"',
  },
  {
    when: 'a rule asks for a band that is not there',
    file: 'precautions.yaml',
    from: 'band.1,',
    to: 'band.7,',
    field: 'precautions.rules.oil-rags.anyOf[1]',
    found: '"band.7"',
    accepts: 'band. and an id (0, 1)',
  },
  {
    when: 'a rule has no condition',
    file: 'precautions.yaml',
    from: '    when: [always]\n',
    to: '',
    on: 'id: every-bench',
    field: 'precautions.rules.every-bench',
    found: '{"id":"every-bench","name":"On every bench","require":{"air":"room-air"},"lin...',
  },
  {
    when: 'a rule asks for nothing',
    file: 'precautions.yaml',
    from: '    streams: [wet-can]\n',
    to: '',
    on: 'id: oil-rags',
    field: 'precautions.rules.oil-rags',
    found: '{"id":"oil-rags","name":"Oily rags","when":["mark.plain-oil"],"anyOf":["ink.o...',
    accepts: 'something to require, a stream or a line',
  },
  {
    when: 'a rule names a stream that is not there',
    file: 'precautions.yaml',
    from: 'streams: [wet-can]',
    to: 'streams: [bin-bag]',
    field: 'precautions.rules.oil-rags.streams[0]',
    found: '"bin-bag"',
    accepts: 'a stream id (wet-can)',
  },
  {
    when: 'a rule prints a line that is not there',
    file: 'precautions.yaml',
    from: 'lines: [level]',
    to: 'lines: [levle]',
    field: 'precautions.rules.every-bench.lines[0]',
    found: '"levle"',
    accepts: 'a line id (one of 43)',
  },
  {
    when: 'a level prints a line that is not there',
    file: 'precautions.yaml',
    from: 'name: window open, line: level',
    to: 'name: window open, line: gone',
    field: 'precautions.scales.air.levels.window.line',
    found: '"gone"',
  },
  {
    when: 'a rule requires a level that its scale has not',
    file: 'precautions.yaml',
    from: 'require: { air: room-air }\n    lines',
    to: 'require: { air: gale }\n    lines',
    on: 'air: gale',
    field: 'precautions.rules.every-bench.require.air',
    found: '"gale"',
    accepts: 'a level of the scale air (room-air, window)',
  },
  {
    when: 'a scale has one level twice',
    file: 'precautions.yaml',
    from: '- { id: window, name: window open, line: level }',
    to: '- { id: window, name: window open, line: level }\n      - { id: window, name: wide open, line: level }',
    on: 'wide open',
    field: 'precautions.scales.air.levels.window.id',
    found: '"window"',
  },
  {
    when: 'a stream stands on no level of the rags scale',
    file: 'rags.yaml',
    from: 'level: wet-can',
    to: 'level: heap',
    field: 'rags.wet-can.level',
    found: '"heap"',
    accepts: 'a level of the scale rags (ordinary, wet-can)',
  },
  {
    when: 'a band forgets what the band below asks for',
    file: 'precautions.yaml',
    from: 'require: { air: window, eyes: most }',
    to: 'require: { air: window }',
    field: 'precautions.bandRules.bands.band-1.require.eyes',
    found: 'nothing',
    accepts: 'least or stricter, as the band below asks',
  },
  {
    when: 'a rank leads to no band',
    file: 'precautions.yaml',
    from: 'noLimitRank: 1',
    to: 'noLimitRank: 9',
    field: 'precautions.bandRules.noLimitRank',
    found: '9',
    accepts: 'a band (0, 1)',
  },
  {
    when: 'vapour figures do not rise',
    file: 'precautions.yaml',
    from: '{ below: 100, rank: 1 }',
    to: '{ below: 0.5, rank: 1 }',
    field: 'precautions.bandRules.vapour[1]',
    found: '{"below":0.5,"rank":1}',
  },
  {
    when: 'a ranked hazard code is unknown',
    file: 'precautions.yaml',
    from: 'H226: 1',
    to: 'H226: 1\n    H999: 1',
    on: 'H999',
    field: 'precautions.bandRules.health.H999',
    found: '"H999"',
    accepts: 'a hazard code (H226, P210)',
  },
  {
    when: 'a line holds a placeholder that nothing fills',
    file: 'lines.yaml',
    from: '{items} go',
    to: '{rubbish} go',
    field: 'lines.rags-wet.rest',
    found: '"{rubbish}"',
  },
  {
    when: 'a first-aid step holds a placeholder that is left open',
    file: 'first-aid.yaml',
    from: '{minutes}',
    to: '{minutes',
    field: 'first-aid.eye-splash.steps[0]',
    found: '"{minutes minutes."',
  },
  {
    when: 'a scheme of drying classes ends before it begins',
    file: 'oils.yaml',
    from: 'semiDryingFrom: 115',
    to: 'semiDryingFrom: 135',
    on: 'semiDryingTo',
    field: 'oils.schemes.one.semiDryingTo',
    found: '130',
    accepts: 'a figure no lower than semiDryingFrom',
  },
  {
    when: 'an oil has neither a range nor a class by name',
    file: 'oils.yaml',
    from: 'byName: drying, ',
    to: '',
    on: 'id: linseed',
    field: 'oils.oils.linseed',
    found: '{"id":"linseed","name":"Linseed oil","how":"read","sources":["handbook"]}',
    accepts: 'a range in iodine, a class in byName or both',
  },
  {
    when: 'a section of the data sheet stands twice',
    file: 'sds-sections.yaml',
    from: '  - id: section-8',
    to: '  - { id: twice, section: 2, heading: x, holds: [x], how: read, sources: [handbook] }\n  - id: section-8',
    on: 'id: twice',
    field: 'sds-sections.sections.twice.section',
    found: '2',
    accepts: 'a section that no other row has',
  },
  {
    when: 'a thing is said to stand in two sections of the data sheet',
    file: 'sds-sections.yaml',
    from: 'holds: [gloves]',
    to: 'holds: [hazard codes] # here',
    field: 'sds-sections.sections.section-8.holds[0]',
    found: '"hazard codes"',
    accepts: 'each thing once',
  },
  {
    when: 'an unknown is settled by a section that has no row',
    file: 'sds-sections.yaml',
    from: 'person: 2',
    to: 'person: 11',
    field: 'sds-sections.settledBy.person',
    found: '11',
    accepts: 'a section that has a row (2, 8)',
  },
  {
    when: 'a region does not go by the name of its file',
    file: 'regions/ie.yaml',
    from: 'id: ie',
    to: 'id: en',
    field: 'regions.ie.id',
    found: '"en"',
    accepts: "the file's own name, ie",
  },
  {
    when: 'a waste code is offered for a waste that is none',
    file: 'regions/ie.yaml',
    from: 'for: [ink, wet-can]',
    to: 'for: [ink, dry-can]',
    field: 'regions.ie.wasteCodes[0].for[1]',
    found: '"dry-can"',
  },
  {
    when: 'a glove grade is for a material that is not there',
    file: 'gloves.yaml',
    from: 'grades: { nitrile: VG }',
    to: 'grades: { nitril: VG }',
    field: 'gloves.chart.linseed-oil.grades.nitril',
    found: '"nitril"',
    accepts: 'a glove material id (nitrile)',
  },
  {
    when: 'a glove share is no share',
    file: 'gloves.yaml',
    from: 'testedWarm: 0.5,',
    to: 'testedWarm: 5,',
    field: 'gloves.share.testedWarm',
    found: '5',
  },
  {
    when: 'one pair of surface and agent is graded twice',
    file: 'pairs.yaml',
    from: '- surface: knife\n  agent: veg-oil',
    to: '- agent: veg-oil # again\n  surface: glass-slab\n  grade: harms\n  why: x\n  how: read\n  sources: [handbook]\n- surface: knife\n  agent: veg-oil',
    on: '# again',
    field: 'pairs.glass-slab.veg-oil.id',
    found: '"glass-slab.veg-oil"',
    accepts: 'an id that no other row has',
  },
  {
    when: 'a band asks for less than the band below',
    file: 'precautions.yaml',
    from: 'require: { air: window, eyes: most }',
    to: 'require: { air: window, eyes: least }',
    and: ['require: { air: room-air, eyes: least }', 'require: { air: room-air, eyes: most }'],
    field: 'precautions.bandRules.bands.band-1.require.eyes',
    found: '"least"',
    accepts: 'most or stricter, as the band below asks',
  },
];

it.each(BREAKS)('names file, line and field when $when', (broken) => {
  const { file, from, to, and, on = to, field, found, accepts } = broken;
  const dir = aRulesFolder({
    [file]: (text) => {
      const once = replaced(text, from, to);
      return and === undefined ? once : replaced(once, ...and);
    },
  });
  const lines = readFileSync(join(dir, file), 'utf8').split('\n');
  const line = lines.findIndex((it) => it.includes(on)) + 1;
  expect(line).toBeGreaterThan(0);

  expect(problemsOf(dir)).toEqual([
    {
      file: `rules/${file}`,
      line,
      field,
      found,
      accepts: accepts ?? (expect.any(String) as string),
    },
  ]);
});

it('names a line that the program speaks by itself and that is gone', () => {
  const dir = aRulesFolder({ 'lines.yaml': (text) => replaced(text, 'id: tool-for', 'id: other') });
  expect(problemsOf(dir)).toMatchObject([
    { file: 'rules/lines.yaml', accepts: expect.stringContaining('tool-for') as string },
  ]);
});

function replaced(text: string, from: string, to: string): string {
  if (!text.includes(from)) throw new Error(`the small tables do not hold ${from}`);
  return text.replace(from, () => to);
}
