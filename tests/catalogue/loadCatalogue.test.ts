import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../server/catalogue/index.js';
import { aRulesFolder, problemsOf } from '../support/rulesFolder.js';

describe('whole tables', () => {
  it('gives every table, from a path or from a file address', () => {
    const dir = aRulesFolder();
    const catalogue = loadCatalogue(dir);
    expect(catalogue.inks.map(({ id }) => id)).toEqual(['oil-relief']);
    expect(catalogue.regions).toHaveLength(10);
    expect(catalogue.gloves.share).toEqual({ testedWarm: 0.5, testedCool: 0.25 });
    expect(catalogue.bandRules.bands).toHaveLength(2);
    expect(loadCatalogue(pathToFileURL(dir))).toEqual(catalogue);
  });

  it('knows a pair by its surface and agent', () => {
    expect(loadCatalogue(aRulesFolder()).pairs[0]?.id).toBe('glass-slab.veg-oil');
  });

  it('fills the columns that a rule left out with nothing', () => {
    const rule = loadCatalogue(aRulesFolder()).rules.find(({ id }) => id === 'every-bench');
    expect(rule).toMatchObject({ anyOf: [], streams: [] });
  });

  it('cannot be changed afterwards, however deep', () => {
    const catalogue = loadCatalogue(aRulesFolder());
    expect(() => {
      (catalogue.inks[0]?.liftsWet as string[]).push('acetone');
    }).toThrow(TypeError);
    expect(() => {
      (catalogue.bandRules.health as Record<string, number>)['H226'] = 0;
    }).toThrow(TypeError);
  });
});

describe('broken tables', () => {
  it('lists everything that is wrong, file by file and line by line', () => {
    const dir = aRulesFolder({
      'surfaces.yaml': (text) => text.replace('oilFilm: must-go', 'oilFilm: may-go'),
      'inks.yaml': (text) =>
        text.replace('group: oil', 'group: oily').replace('how: read', 'how: guessed'),
      'agents.yaml': (text) => text.replace('substance: oil', 'substance: oyl'),
    });
    expect(problemsOf(dir).map(({ file, field }) => `${file} ${field}`)).toEqual([
      'rules/agents.yaml agents.veg-oil.substance',
      'rules/inks.yaml inks.oil-relief.group',
      'rules/inks.yaml inks.oil-relief.how',
      'rules/surfaces.yaml surfaces.glass-slab.oilFilm',
    ]);
  });

  it('says each in one line that can be found with an editor', () => {
    const dir = aRulesFolder({
      'inks.yaml': (text) =>
        text.replace('liftsDried: [white-spirit]', 'liftsDried: [white-spirt]'),
    });
    expect(() => loadCatalogue(dir)).toThrow(
      expect.objectContaining({
        code: 'RULES_WRONG',
        message:
          'The tables in rules/ cannot be used.\nrules/inks.yaml:8 inks.oil-relief.liftsDried[0]: ' +
          'found "white-spirt", accepts an agent id (veg-oil, white-spirit)',
      }) as Error,
    );
  });

  it('counts the ids instead of printing them when there are many', () => {
    const dir = aRulesFolder({
      'marks.yaml': (text) =>
        text +
        Array.from(
          { length: 20 },
          (_, n) => `- { id: mark-${n}, means: x, how: common practice, sources: [practice] }\n`,
        ).join(''),
      'inks.yaml': (text) => text.replace('marks: [plain-oil]', 'marks: [plane-oil]'),
    });
    expect(problemsOf(dir)[0]?.accepts).toBe('a mark id (one of 23)');
  });

  it('names the line where YAML cannot be read, and calls no id of that table unknown', () => {
    const dir = aRulesFolder({
      'agents.yaml': (text) => text.replace('marks: [plain-oil]', 'marks: [plain-oil'),
    });
    const problems = problemsOf(dir);
    expect(new Set(problems.map(({ file }) => file))).toEqual(new Set(['rules/agents.yaml']));
    expect(problems[0]).toMatchObject({ line: 6, field: 'agents' });
  });

  it('refuses a key that stands twice in one row', () => {
    const dir = aRulesFolder({
      'agents.yaml': (text) => text.replace('  stage: 1\n', '  stage: 1\n  stage: 3\n'),
    });
    const text = readFileSync(join(dir, 'agents.yaml'), 'utf8').split('\n');
    expect(problemsOf(dir)).toMatchObject([
      { file: 'rules/agents.yaml', line: text.indexOf('  stage: 3') + 1 },
    ]);
  });

  it.each(['sources.yaml', 'pairs.yaml', 'gloves.yaml', 'precautions.yaml', 'regions/nz.yaml'])(
    'names %s when it is missing, and nothing else',
    (file) => {
      const dir = aRulesFolder({ [file]: () => undefined });
      expect(problemsOf(dir)).toMatchObject([
        { file: `rules/${file}`, line: 1, found: 'no such file' },
      ]);
    },
  );

  it('wants a list where a table should be one', () => {
    const dir = aRulesFolder({ 'people.yaml': () => 'alone: true\n' });
    expect(problemsOf(dir)).toContainEqual({
      file: 'rules/people.yaml',
      line: 1,
      field: 'people',
      found: '{"alone":true}',
      accepts: 'a list of rows',
    });
  });

  it('names the pair of surface and agent that has no row', () => {
    const dir = aRulesFolder({
      'pairs.yaml': (text) => text.slice(0, text.lastIndexOf('- surface: knife')),
    });
    const lines = readFileSync(join(dir, 'pairs.yaml'), 'utf8').split('\n');
    expect(problemsOf(dir)).toEqual([
      {
        file: 'rules/pairs.yaml',
        line: lines.indexOf('- surface: knife') + 1,
        field: 'pairs.knife.white-spirit',
        found: 'nothing',
        accepts: 'a row for this surface with this agent',
      },
    ]);
  });

  it('names the scale that has no row, and asks nothing more of it', () => {
    const dir = aRulesFolder({
      'precautions.yaml': (text) => text.replace(/ {2}- id: dust[^]*?(?= {2}- id: rags)/, ''),
    });
    expect(problemsOf(dir)).toMatchObject([
      { file: 'rules/precautions.yaml', field: 'precautions.scales.dust', found: 'nothing' },
    ]);
  });

  it('names the code of an agent that no rank is given for', () => {
    const dir = aRulesFolder({
      'precautions.yaml': (text) => text.replace('  health:\n    H226: 1\n', '  health: {}\n'),
    });
    expect(problemsOf(dir)).toMatchObject([
      {
        file: 'rules/substances.yaml',
        field: 'substances.spirit.hazardCodes[0]',
        found: '"H226"',
      },
    ]);
  });

  it('takes no precautionary code for a hazard code', () => {
    const dir = aRulesFolder({
      'substances.yaml': (text) => text.replace('Codes: [P210]', 'Codes: [H226]'),
    });
    expect(problemsOf(dir)).toMatchObject([
      {
        field: 'substances.spirit.precautionaryCodes[0]',
        accepts: 'a code of the kind precautionary (P210)',
      },
    ]);
  });

  it('wants bands without a gap', () => {
    const dir = aRulesFolder({
      'precautions.yaml': (text) => text.replace('band: 1\n', 'band: 2\n'),
    });
    expect(problemsOf(dir)).toContainEqual(
      expect.objectContaining({
        field: 'precautions.bandRules.bands.band-1.band',
        found: '2',
        accepts: '1, the band after',
      }),
    );
  });
});
