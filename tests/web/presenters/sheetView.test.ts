import * as cheerio from 'cheerio';
import { describe, expect, it } from 'vitest';
import { PHASES, type BenchInput, type Sheet } from '../../../server/reasoning/index.js';
import { sheetView, type SheetView } from '../../../server/web/presenters/sheetView.js';
import { aSheet } from '../../support/aSheet.js';
import { everyBench } from '../../support/everyBench.js';
import { catalogue, reasoner, words } from '../../support/rules.js';
import { renderPage } from '../../support/views.js';

const ADDRESS = '/sheet?in=uk&mix=oil-relief&on=glass-slab';

const viewOf = (sheet: Sheet): SheetView =>
  sheetView(sheet, {
    words,
    catalogue,
    address: ADDRESS,
    madeOn: '2026-11-25',
    version: '1.2.3',
  });
const viewOfBench = (bench: BenchInput): SheetView => viewOf(reasoner.sheet(bench));
const allLines = (view: SheetView) => view.phases.flatMap((phase) => phase.lines);

const oilBench: BenchInput = {
  region: 'uk',
  mixes: [{ parts: [{ ink: 'oil-relief' }] }],
  surfaces: ['glass-slab', 'lino-block'],
};

describe('the sheet on the page', () => {
  it('is called by the names of its mixes, or by what is in them', () => {
    expect(viewOf(aSheet).name).toBe('tram green');
    expect(viewOfBench(oilBench).name).toBe(words.short('ink', 'oil-relief'));
  });

  it('says what takes it off, air, gloves and rags in the words of the tables', () => {
    const { answers } = viewOf(aSheet);
    expect(answers.agents).toEqual(['veg-oil', 'soap-water'].map((id) => words.short('agent', id)));
    expect(answers.air).toBe(words.level('air', 'window'));
    expect(answers.people).toBe(words.level('people', 'anyone-inducted'));
    expect(answers.glove).toBe(words.name('material', 'nitrile'));
    expect(answers.change).toBe('Change gloves 30 minutes after the first splash.');
    expect(answers.rags.map((stream) => stream.name)).toEqual([words.name('stream', 'wet-can')]);
    expect(answers.rags[0]?.container).not.toBe('');
    expect(answers.stuck).toBe(1);
  });

  it('keeps the phases in the order of the day, with help always among them', () => {
    for (const sheet of [reasoner.sheet(oilBench), { ...aSheet, lines: [] }]) {
      const ids = viewOf(sheet).phases.map((phase) => phase.id);
      expect(ids).toEqual(PHASES.filter((phase) => ids.includes(phase)));
      expect(ids).toContain('if-it-goes-wrong');
    }
  });

  it('gives every line a reason that leads to its row', () => {
    for (const bench of everyBench.slice(0, 20)) {
      for (const line of allLines(viewOfBench(bench))) {
        const { first, others, folded, foldedCount } = line.why;
        expect(first.name).not.toBe('');
        expect(foldedCount).toBe(folded.length);
        for (const reason of [first, ...others, ...folded]) {
          if (reason.href === '') continue;
          const id = decodeURIComponent(reason.href.replace('/rules/', ''));
          expect(words.row(id)?.name).toBe(reason.name);
        }
      }
    }
  });

  it('names each line once, so that its tick can be kept', () => {
    for (const bench of everyBench.slice(0, 20)) {
      const ids = allLines(viewOfBench(bench)).map((line) => line.id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.filter((id) => /\s/.test(id))).toEqual([]);
    }
  });

  it('puts things that must never meet above all else', () => {
    const bench = { ...oilBench, agentsAtHand: ['bleach', 'household-ammonia', 'veg-oil'] };
    const { stops } = viewOfBench(bench);
    expect(stops.map((stop) => stop.href)).toContain('/rules/never.bleach-with-ammonia');
    const page = cheerio.load(renderPage('sheet', viewOfBench(bench)));
    expect(page('main > *').not('svg').first().hasClass('stops')).toBe(true);
  });

  it('shows what is unknown, with the section of the data sheet that settles it', () => {
    const [unknown] = viewOf(aSheet).unknown;
    expect(unknown?.kindKey).toBe('kind.ink');
    expect(unknown?.says).toMatch(/"my tin".*section 2 /);
  });

  it('says when to change gloves in the words of the line, whatever the minutes', () => {
    const change = (changeAfterMin?: number) => {
      const { materials, thickness, because } = aSheet.gloves;
      const gloves = { materials, thickness, because };
      const sheet = {
        ...aSheet,
        gloves: changeAfterMin === undefined ? gloves : { ...gloves, changeAfterMin },
      };
      return viewOf(sheet).answers.change;
    };
    const head = (id: string) => catalogue.lines.find((line) => line.id === id)?.head;
    expect(change(0)).toBe(head('gloves-change-now'));
    expect(change()).toBe(head('gloves-change-torn'));
    expect(change(7)).toBe(head('gloves-change-after')?.replace('{minutes}', '7'));
    for (const bench of everyBench.slice(0, 40)) {
      const view = viewOfBench(bench);
      expect(allLines(view).map((line) => line.head)).toContain(view.answers.change);
    }
  });

  it('asks where it is when the address does not say, with one link a region', () => {
    const { ask } = sheetView(aSheet, {
      words,
      catalogue,
      address: '/sheet?mix=oil-relief',
      madeOn: '2026-11-25',
      version: '1',
    });
    expect(ask.map(({ href }) => href)).toEqual(
      catalogue.regions.map(({ id }) => `/sheet?in=${id}&mix=oil-relief`),
    );
    expect(viewOf(aSheet).ask).toEqual([]);
  });

  it('says what holds for every bench once, and names it after that', () => {
    const always = catalogue.rules.filter(({ when }) => when.join() === 'always');
    for (const bench of [oilBench, ...everyBench.slice(0, 10)]) {
      const view = viewOfBench(bench);
      const first = [...view.deferral, ...allLines(view)].map((line) => line.why.first);
      let told = 0;
      for (const { id } of always) {
        const own = first.filter(({ href }) => href === `/rules/${id}`);
        expect(own.filter(({ says }) => says !== '').length).toBe(own.length > 0 ? 1 : 0);
        told += own.length;
      }
      expect(told).toBeGreaterThan(1);
    }
  });

  it('is set closer for print when it has many lines', () => {
    const [line] = aSheet.lines;
    const lines = Array.from({ length: 80 }, (_, n) => ({ ...line, id: `line-${n}` }));
    expect(viewOf({ ...aSheet, lines } as Sheet).isLong).toBe(true);
    expect(viewOf(aSheet).isLong).toBe(false);
  });

  it('flags a dose in the words of its line', () => {
    expect(viewOf(aSheet).doses).toEqual([
      'Check the dose of cobalt drier. You put 3 %. Usual is 0.5 to 2.5 %.',
    ]);
  });

  it('says what a milder kind would spare', () => {
    const [swap] = viewOf(aSheet).swaps;
    expect(swap).toBe(
      'Take washable oil ink in place of oil relief ink. Then this is enough: room air. No vegetable oil is needed.',
    );
  });

  it('frames what comes first, and says it nowhere else', () => {
    const view = viewOfBench(oilBench);
    expect(view.deferral).toHaveLength(1);
    const heads = allLines(view).map((line) => line.head);
    expect(heads).not.toContain(view.deferral[0]?.head);
  });

  it('shows the hazard signs and the signal word of each agent', () => {
    const view = viewOfBench({
      mixes: [{ parts: [{ ink: 'oil-litho' }] }],
      surfaces: ['litho-stone'],
      agentsAtHand: ['white-spirit'],
    });
    const [spirit] = view.ready.agents;
    expect(spirit?.signal).toBe('Danger');
    expect(spirit?.signs.map((sign) => sign.svg)).toContain('signs/GHS02');
    expect(spirit?.amount).toMatch(/ml/);
  });

  it('groups the digits of how many ways there were, and is silent when there was one', () => {
    const withPlans = (chosenFrom: string) =>
      viewOf({ ...aSheet, plan: { ...aSheet.plan, chosenFrom } }).ready.chosenFrom;
    expect(withPlans('1234567')).toBe('1\u00a0234\u00a0567');
    expect(withPlans('1')).toBe('');
  });

  it('leads back to the bench and on to help in the same region', () => {
    const view = viewOf(aSheet);
    expect(view.benchHref).toBe('/?in=uk&mix=oil-relief&on=glass-slab');
    expect(view.frame.helpHref).toBe('/help-now?in=uk');
    expect(view.foot.textHref).toBe('/sheet.txt?in=uk&mix=oil-relief&on=glass-slab');
  });

  it('stands on sources that are each named once', () => {
    const { sources } = viewOfBench(oilBench);
    const titles = sources.map((source) => source.title);
    expect(titles.length).toBeGreaterThan(0);
    expect(titles).toEqual([...titles].sort());
    expect(new Set(sources.map((source) => JSON.stringify(source))).size).toBe(sources.length);
  });

  it('has no region but one of the tables', () => {
    const nowhere = { ...aSheet, bench: { ...aSheet.bench, region: 'atlantis' } };
    expect(() => viewOf(nowhere)).toThrow('atlantis');
  });
});

describe('the sheet as HTML', () => {
  it('has a field for all that the templates ask for, whatever the bench', () => {
    for (const bench of everyBench.filter((_bench, index) => index % 5 === 0)) {
      const html = renderPage('sheet', viewOfBench(bench));
      expect(html).toContain('</html>');
      expect(html).not.toMatch(/\bundefined\b|\[object /);
    }
  });

  it('never says that anything is safe', () => {
    const text = cheerio
      .load(renderPage('sheet', viewOfBench(oilBench)))('main')
      .text();
    expect(text.replace(/Where this comes from[\s\S]*/, '')).not.toMatch(/\bsafe\b/i);
  });

  it('shows typed words as words', () => {
    const html = renderPage(
      'sheet',
      viewOfBench({
        mixes: [{ name: '<img src=x>', parts: [{ ink: '<script>' }] }],
        surfaces: ['"><b>'],
      }),
    );
    expect(html).not.toMatch(/<img src=x|<script>|"><b>"/);
    expect(html).toContain('&lt;script&gt;');
  });

  it('needs no style and no script of its own', () => {
    const page = cheerio.load(renderPage('sheet', viewOfBench(oilBench)));
    expect(page('[style], style, script:not([src])').length).toBe(0);
    expect(
      page('*')
        .toArray()
        .flatMap((tag) => ('attribs' in tag ? Object.keys(tag.attribs) : [])),
    ).not.toContainEqual(expect.stringMatching(/^on/));
  });

  it('gives each line a box with a name and each reason a tap', () => {
    const page = cheerio.load(renderPage('sheet', viewOfBench(oilBench)));
    const lines = page('.lines .line').toArray();
    expect(lines.length).toBeGreaterThan(10);
    for (const line of lines) {
      const id = page(line).find('input[type=checkbox]').attr('id') ?? '';
      expect(page(line).find(`label[for="${id}"]`).text().trim()).not.toBe('');
      expect(page(line).find('details > summary').length).toBeGreaterThan(0);
    }
  });
});
