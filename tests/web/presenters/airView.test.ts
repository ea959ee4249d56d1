import { describe, expect, it } from 'vitest';
import type { AirAnswer } from '../../../server/reasoning/index.js';
import { airFormOf } from '../../../server/web/forms/airAddress.js';
import { airAnswersView } from '../../../server/web/presenters/airAnswersView.js';
import { airFormView } from '../../../server/web/presenters/airFormView.js';
import { airLimitsView } from '../../../server/web/presenters/airLimitsView.js';
import { airPlotView } from '../../../server/web/presenters/airPlotView.js';
import { airProblems } from '../../../server/web/presenters/airProblems.js';
import { airView } from '../../../server/web/presenters/airView.js';
import { airWhatIfView } from '../../../server/web/presenters/airWhatIfView.js';
import { anAirAnswer } from '../../support/anAirAnswer.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

/** The estimate without what never comes. */
const without = (...keys: readonly (keyof AirAnswer)[]): AirAnswer =>
  Object.fromEntries(
    Object.entries(anAirAnswer).filter(([key]) => !keys.some((gone) => gone === key)),
  ) as unknown as AirAnswer;

describe('the four numbers', () => {
  it('are rounded against the reader', () => {
    expect(airAnswersView(anAirAnswer, words)).toMatchObject({
      airOut: 'about 4 hours',
      airOutNotes: ['after the last use.', 'It may be 100 minutes, it may be 10 hours.'],
      level: '390 mg/m³',
      against: 'Against the limits: 1.2 times (50 % to 2.1 times).',
      isOver: true,
      most: [{ text: '35 ml', said: 'You said 40 ml.' }],
      fan: '110 m³ an hour',
      fanNow: 'To keep the limits. Air counted now: 90 m³ an hour. Less air means a longer airing.',
    });
  });

  it('say so when the room never clears and no fan is enough', () => {
    const answer = without('airOutMin', 'fanNeededM3PerHour');
    expect(airAnswersView(answer, words)).toMatchObject({
      airOut: 'It does not clear',
      airOutNotes: ['at this airing.'],
      fan: 'No fan is enough',
    });
    const perhaps = { ...anAirAnswer, ranges: { ...anAirAnswer.ranges, airOutMin: { low: 100 } } };
    expect(airAnswersView(perhaps, words).airOutNotes.at(-1)).toBe(
      'It may be 100 minutes. It may never clear.',
    );
  });

  it('name the agents where there are several, and what is caught at the bench', () => {
    const [first] = anAirAnswer.mostMl;
    const answer = {
      ...anAirAnswer,
      fanNeededM3PerHour: 0,
      room: { ...anAirAnswer.room, captured: 0.5 },
      mostMl: [
        ...(first ? [first] : []),
        { substance: 'toluene', saidMl: 5, ml: 3, carefulMl: 0.4 },
      ],
    };
    const view = airAnswersView(answer, words);
    expect(view.most.map(({ text }) => text)).toEqual([
      'White spirit: 35 ml',
      'Toluene: less than 1 ml',
    ]);
    expect(view.basis).toContain('50 % of the vapour is caught at the bench.');
    expect(view.fan).toBe('no more than now');
  });
});

describe('the limits', () => {
  const limits = airLimitsView(anAirAnswer, { words, catalogue });

  it('that count here stand apart from those of other places', () => {
    expect(limits.here.map(({ limit }) => limit)).toEqual(['WEL']);
    expect(limits.elsewhere.map(({ limit }) => limit)).toEqual(['TLV']);
  });

  it('are printed as their table prints them, with the molar mass where ppm was turned', () => {
    expect(limits.here[0]).toMatchObject({ printed: '54 mg/m³', expected: '1.2 times' });
    expect(limits.elsewhere[0]?.printed).toBe('250 ppm, counted as 593 mg/m³, with 58.08 g/mol');
  });

  it('name their source and how it is known', () => {
    expect(limits.elsewhere[0]?.howKey).toBe('how.from memory');
    expect(limits.here[0]?.sources).toHaveLength(1);
  });
});

describe('the plot of the page', () => {
  it('has its numbers as a table too, with the highest point and each time once', () => {
    const { rows } = airPlotView(anAirAnswer, words);
    expect(rows).toContainEqual({ time: '20 min', near: '410 mg/m³', far: '300 mg/m³' });
    const long = reasoner.air({
      room: { volumeM3: 60, air: 'window' },
      uses: [{ agent: 'white-spirit', ml: 40 }],
    });
    const times = airPlotView(long, words).rows.map(({ time }) => time);
    expect(times.length).toBeLessThan(20);
    expect(new Set(times).size).toBe(times.length);
  });

  it('draws limits of one level as one line, and names those that it does not draw', () => {
    const [first] = anAirAnswer.shares;
    if (!first) throw new Error('no share');
    const shares = [first, { ...first, limit: 'TLV' }, { ...first, limit: 'PEL', limitMgM3: 2900 }];
    const { wide, offTop } = airPlotView({ ...anAirAnswer, shares }, words);
    expect(wide).toContain('>WEL and TLV, day: 54<');
    expect(offTop).toBe('Limits not drawn, in mg/m³: PEL, day: 2,900.');
  });
});

describe('what if', () => {
  const better = { ...anAirAnswer, worst15MinMgM3: 100 };

  it('stands beside what was said, only what shows a difference', () => {
    const rows = airWhatIfView(
      anAirAnswer,
      [
        { name: 'Lids on', answer: better },
        { name: 'Window', answer: { ...anAirAnswer, worst15MinMgM3: 381.5 } },
      ],
      words,
    );
    expect(rows.map(({ name, worst }) => [name, worst])).toEqual([
      ['As you said', '390 mg/m³'],
      ['Lids on', '100 mg/m³'],
    ]);
  });

  it('is not there when nothing helps', () => {
    expect(airWhatIfView(anAirAnswer, [], words)).toEqual([]);
  });
});

const pageOf = (query: string, input?: Parameters<typeof reasoner.air>[0]) =>
  airView({
    ...{ reasoner, catalogue, words, problems: [], rows: 0, input },
    form: airFormOf(query),
  });

describe('the page of the air', () => {
  const input = {
    region: 'de',
    room: { volumeM3: 30, air: 'room-air' },
    uses: [{ agent: 'turpentine', ml: 100 }],
  };

  it('offers more air, lids, less liquid and a milder agent, and nothing that makes it worse', () => {
    const [result] = pageOf('', input).results;
    const names = result?.whatIf.map(({ name }) => name) ?? [];
    expect(names).toEqual(
      expect.arrayContaining(['As you said', 'Window open', 'Exhaust fan', 'Half the liquid']),
    );
    expect(names.some((name) => /, not turpentine$/.test(name))).toBe(true);
    const best = { ...input, room: { volumeM3: 30, air: 'bench-extraction' } };
    const offered = pageOf('', best).results[0]?.whatIf.map(({ name }) => name) ?? [];
    expect(offered).not.toContain('Window open');
  });

  it('says the estimate once, in its frame, and all other cautions below the answers', () => {
    const view = pageOf('', input);
    expect(view.estimate).toMatch(/estimate, not a measurement/);
    expect(view.results[0]?.cautions.length).toBeGreaterThan(0);
    expect(view.results[0]?.cautions).not.toContain(view.estimate);
  });

  it('asks for a use when only the room is said', () => {
    expect(pageOf('room=60', { room: { volumeM3: 60 }, uses: [] })).toMatchObject({
      needsUse: true,
      results: [],
    });
    expect(pageOf('', { room: {}, uses: [] }).needsUse).toBe(false);
  });
});

describe('the form of the air', () => {
  const form = (query: string, rows = 0) =>
    airFormView({ catalogue, words, form: airFormOf(query), problems: [], rows });

  it('shows four rows, or as many as there are uses, and offers more up to the most', () => {
    expect(form('').rows).toHaveLength(4);
    expect(form('').moreRows).toBe(8);
    expect(form('', 8).rows).toHaveLength(8);
    expect(form('use=' + Array(6).fill('acetone:1').join(',')).rows).toHaveLength(6);
    expect(form('', 999)).toMatchObject({ moreRows: 0 });
  });

  it('comes back with all that was typed, and opens what holds something', () => {
    const view = form('in=uk&room=5x4x3&ach=2&zones=1&use=acetone:20@10+5/50~lid,my%20bottle:3');
    expect(view.regions.find(({ isOn }) => isOn)?.value).toBe('uk');
    expect(view.room.lengthM.value).toBe('5');
    expect(view.isRoomOpen).toBe(true);
    const [acetone, other, empty] = view.rows;
    expect(acetone).toMatchObject({ isLidded: true, isOpen: true });
    expect(acetone?.start.value).toBe('10');
    expect(other?.liquids.flatMap(({ options }) => options).find(({ isOn }) => isOn)?.label).toBe(
      'my bottle',
    );
    expect(empty).toMatchObject({ isOpen: false, isLidded: false });
  });

  it('leads from a problem to its field by the words beside it', () => {
    const problem = (field: string) => ({ path: '', field, got: 'x', accepts: 'y' });
    const found = airProblems([problem('m3'), problem('ml1'), problem('')], words);
    expect(found.map(({ href, label }) => [href, label])).toEqual([
      ['#m3', 'Volume of the room'],
      ['#ml1', 'Use 2: How much, ml'],
      ['', 'What you use'],
    ]);
  });
});
