import { describe, expect, it } from 'vitest';
import { SPOKEN_TEXTS, type SheetLine } from '../../server/reasoning/index.js';
import { SAID_BY } from '../../server/words/sayings.js';
import { aSheet } from '../support/aSheet.js';
import { everyBench } from '../support/everyBench.js';
import { catalogue, reasoner, words } from '../support/rules.js';

const lineOf = (id: string) => aSheet.lines.find((line) => line.id === id) ?? aSheet.lines[0];
const said = (id: string, region = 'uk') => {
  const line = lineOf(id);
  return line && words.line(line, region);
};

describe('names', () => {
  it('are the labels of the tables', () => {
    expect(words.name('ink', 'oil-relief')).toBe('Oil-based relief ink');
    expect(words.short('ink', 'oil-relief')).toBe('Oil relief ink');
    expect(words.name('region', 'uk')).toBe('United Kingdom');
    expect(words.level('air', 'window')).toBe('window open');
  });

  it('fall back to what was typed', () => {
    expect(words.name('ink', 'my tin')).toBe('my tin');
    expect(words.short('surface', 'pasta machine')).toBe('pasta machine');
    expect(words.level('air', 'gale')).toBe('gale');
    expect(words.stream('heap').name).toBe('heap');
    expect(words.never('nothing')).toBe('nothing');
  });

  it('find an extender among the additives, and another chemical among the agents', () => {
    expect(words.short('additive', 'transparent-base')).toBe('Oil extender');
    expect(words.name('agent', 'bleach')).toBe('Chlorine bleach');
    expect(words.short('equipment', 'bleach')).toBe('Chlorine bleach');
  });
});

describe('lines', () => {
  it('of a tool name it and say its working order', () => {
    expect(said('tool.glass-slab.mix-1')).toEqual({
      head: 'Glass slab:',
      rest: 'Scrape with a plastic scraper, flat, then vegetable oil, then dry with a clean rag.',
    });
  });

  it('name what goes into a stream', () => {
    expect(said('rags-wet-can')?.rest).toContain('oil relief ink and vegetable oil.');
  });

  it('join agents in working order, and name the rows of items', () => {
    const line = (text: string, values: Record<string, string[]>) =>
      words.line(
        { ...aSheet.lines[0], text, values, route: undefined } as unknown as SheetLine,
        'uk',
      );
    const agents = ['veg-oil', 'white-spirit', 'soap-water'];
    const stuck = line('tool-stuck-hand', {
      surface: ['glass-slab'],
      inks: ['oil-relief'],
      agents,
    });
    expect(stuck.head).toBe('Glass slab, oil relief ink: wipe dry and wait.');
    expect(stuck.rest).toContain('vegetable oil, then white spirit, then soap and water.');
    const items = ['agent.white-spirit', 'additive.cobalt-drier', 'ink.my tin'];
    expect(line('sensitiser-skin', { items }).head).toContain(
      ': white spirit, cobalt drier and my tin.',
    );
  });

  it('write dates with the month in words', () => {
    expect(said('aid-eye')).toBeDefined();
    const call = { ...aSheet.lines[0], text: 'aid-call', values: {}, route: undefined };
    expect(words.line(call as unknown as SheetLine, 'uk').rest).not.toMatch(/\d{4}-\d\d-\d\d/);
  });

  it('take the minutes of the region', () => {
    const minutes = catalogue.regions.map((region) => region.flushMinutes);
    const heads = catalogue.regions.map((region) => said('aid-eye', region.id)?.head);
    expect(heads).toEqual(minutes.map((one) => `In the eye: rinse with water for ${one} minutes.`));
  });

  it('show the text itself when no table has it', () => {
    const line = { ...aSheet.lines[0], text: 'no-such-text' } as (typeof aSheet.lines)[number];
    expect(words.line(line, 'uk')).toEqual({ head: 'no-such-text', rest: '' });
  });

  it('are whole on every sheet: nothing unfilled, no stray marks, a capital and an end', () => {
    const faults = new Set<string>();
    for (const bench of everyBench) {
      const sheet = reasoner.sheet(bench);
      for (const line of sheet.lines) {
        const { head, rest } = words.line(line, sheet.bench.region);
        const all = `${head} ${rest}`.trim();
        const isWhole = /^["\p{Lu}\d]/u.test(all) && /[.:?!"]$/.test(all);
        if (!isWhole || /[{}]|undefined|object|NaN| {2}|\.\.| [.,:]/.test(all)) faults.add(all);
      }
    }
    expect([...faults]).toEqual([]);
  });
});

describe('rows', () => {
  it('stand for every reason on every sheet, each with a source', () => {
    const missing = new Set<string>();
    for (const bench of everyBench) {
      const sheet = reasoner.sheet(bench);
      const reasons = [
        ...sheet.lines.flatMap((line) => [...line.because, ...line.folded]),
        ...sheet.levels.flatMap((level) => [...level.because, ...level.folded]),
        ...sheet.plan.routes.flatMap((route) => route.because),
        ...sheet.gloves.because,
      ];
      for (const id of reasons) if (!words.row(id)?.sources.length) missing.add(id);
    }
    expect([...missing]).toEqual([]);
  });

  it('each have an id of their own, a name and something to say', () => {
    const rows = words.rows();
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    expect(rows.filter((row) => row.name === '' || row.says === '')).toEqual([]);
  });

  it('say facts with their units', () => {
    expect(words.row('substance.white-spirit')?.says).toMatch(/^Flash point \d+ °C\. Boils at/);
    expect(words.row('pair.glass-slab.veg-oil')?.name).toBe('Glass slab and vegetable oil');
    expect(words.row('level.air.window')?.says).toBe('Step 2 of 6 on this scale, mildest first.');
    expect(words.row('no.such.row')).toBeUndefined();
  });
});

describe('sayings', () => {
  it('take their words from lines that the program makes sure of', () => {
    for (const line of Object.values(SAID_BY)) {
      const ids = typeof line === 'string' ? [line] : Object.values(line);
      for (const id of ids) expect(SPOKEN_TEXTS).toContain(id);
    }
  });

  it('say what is unknown and what settles it', () => {
    expect(words.unknown({ kind: 'ink', id: 'my tin', sdsSection: 2 })).toContain('section 2 of');
    expect(words.unknown({ kind: 'person', id: 'x', sdsSection: 2 })).toContain('Ask the keeper.');
  });

  it('say what a swap spares', () => {
    const [swap] = aSheet.swaps;
    expect(swap && words.swap(swap)).toBe(
      'Take washable oil ink in place of oil relief ink. Then this is enough: room air. No vegetable oil is needed.',
    );
    const without = {
      kind: 'leave-out',
      what: 'ink.my tin',
      spares: [],
      sparesAgents: [],
      sparesMl: [],
    } as const;
    expect(words.swap(without)).toBe('Leave out my tin.');
  });

  it('say how far a dose is over', () => {
    const [flag] = aSheet.flags;
    expect(flag && words.flag(flag)).toBe(
      'Check the dose of cobalt drier. You put 3 %. Usual is 0.5 to 2.5 %.',
    );
    const values = { date: '2026-01-31' };
    const bottle = { kind: 'bottle-used', subject: 'agent.white-spirit', values } as const;
    expect(words.flag(bottle)).toBe(
      'The figures for white spirit are from your own data sheet. Dated 31 January 2026.',
    );
  });
});

describe('regions', () => {
  it('say first aid with their own minutes, numbers with the day they were looked up, and whom to ask', () => {
    for (const { id, flushMinutes, checkedOn, deferTo } of catalogue.regions) {
      const steps = words.firstAid(id).flatMap((aid) => [...aid.steps, ...aid.never]);
      expect(steps.filter((step) => /[{}]/.test(step))).toEqual([]);
      expect(steps.some((step) => step.includes(`${flushMinutes} minutes`))).toBe(true);
      expect(words.emergency(id)).toMatchObject({ checkedOn });
      expect(words.defer(id)).toHaveLength(deferTo.length + 1);
    }
  });

  it('are those for everywhere else when nobody knows the region', () => {
    expect(words.emergency('atlantis')).toEqual(words.emergency('other'));
  });
});
