import * as cheerio from 'cheerio';
import { describe, expect, it } from 'vitest';
import type { BenchInput } from '../../../server/reasoning/index.js';
import { parseAddress } from '../../../server/web/forms/address.js';
import { benchOfForm, formOf, readForm } from '../../../server/web/forms/benchForm.js';
import { knownIds } from '../../../server/web/forms/known.js';
import type { Problem } from '../../../server/web/forms/problem.js';
import { typedOf } from '../../../server/web/forms/typedBench.js';
import { benchView, type BenchView } from '../../../server/web/presenters/benchView.js';
import { catalogue, words } from '../../support/rules.js';
import { files, renderPage } from '../../support/views.js';

const known = knownIds(catalogue);
type FormBody = Readonly<Record<string, string | string[]>>;

const viewOfBench = (bench: BenchInput): BenchView =>
  benchView({ catalogue, words, form: formOf(typedOf(bench), known), problems: [] });
const viewOfForm = (body: FormBody): BenchView => {
  const form = readForm(body);
  return benchView({ catalogue, words, form, problems: benchOfForm(form, known).problems ?? [] });
};
const page = (view: BenchView) => cheerio.load(renderPage('bench', view));

/** What the page would send if its button were pressed. */
function sent($: cheerio.CheerioAPI): FormBody {
  const body: Record<string, string[]> = {};
  for (const { name, value } of $('form.bench-form').serializeArray()) {
    (body[name] ??= []).push(value);
  }
  body['region'] = [$('select[form=bench] option[selected]').attr('value') ?? ''];
  return body;
}

const wholeBench: BenchInput = {
  region: 'ie',
  mixes: [
    {
      name: 'tram-line green',
      parts: [
        { ink: 'transparent-base-ww', share: 70 },
        { ink: 'water-washable-oil', share: 28 },
        { ink: 'my tin', share: 2 },
      ],
      additives: [{ additive: 'cobalt-drier', percent: 1.5 }, { additive: 'a drop of that' }],
      dried: true,
      on: ['glass-slab'],
    },
    { parts: [{ ink: 'oil-relief' }], additives: [{ additive: 'transparent-base', percent: 20 }] },
  ],
  surfaces: ['glass-slab', 'litho-stone', 'pasta machine'],
  equipment: ['etching-press', 'old mangle'],
  agentsAtHand: ['bleach', 'grey bottle', 'veg-oil'],
  uses: [{ agent: 'white-spirit', ml: 40 }],
  room: { lengthM: 5, widthM: 4, heightM: 3, air: 'window', temperatureC: 18, fanM3PerHour: 200 },
  people: { count: 12, under16: true, flags: ['asthma', 'left-handed'] },
};

describe('the bench page', () => {
  it('sends back the very bench that it was filled in with', () => {
    const again = benchOfForm(readForm(sent(page(viewOfBench(wholeBench)))), known);
    const straight = benchOfForm(formOf(typedOf(wholeBench), known), known);
    expect(again.problems).toBeUndefined();
    expect(again).toEqual(straight);
  });

  it('offers every usual bench in one tap', () => {
    const { usual } = viewOfBench({ mixes: [], surfaces: [] });
    expect(usual).toHaveLength(catalogue.usualBenches.length);
    for (const { href, name } of usual) {
      expect(name).not.toBe('');
      expect(parseAddress(href.replace('/sheet?', ''), known).problems).toBeUndefined();
    }
  });

  it('offers every ink, additive, surface, machine, agent, person and region of the tables', () => {
    const $ = page(viewOfBench({ mixes: [], surfaces: [] }));
    const offered = (name: string) =>
      $(`input[name="${name}"]`)
        .toArray()
        .map((box) => $(box).attr('value'))
        .sort();
    const ids = (rows: readonly { readonly id: string }[]) => rows.map((row) => row.id).sort();
    expect(offered('mix0.ink')).toEqual(ids(catalogue.inks));
    expect(offered('mix0.additive')).toEqual(ids(catalogue.additives));
    expect(offered('surface')).toEqual(ids(catalogue.surfaces));
    expect(offered('equipment')).toEqual(ids([...catalogue.equipment, ...catalogue.others]));
    expect(offered('hand')).toEqual(ids(catalogue.agents));
    expect([...offered('who'), ...offered('under16').map(() => 'under16')].sort()).toEqual(
      ids(catalogue.people),
    );
    const regions = $('select[name=region] option').toArray();
    expect(regions.map((one) => $(one).attr('value'))).toEqual([
      '',
      ...catalogue.regions.map((row) => row.id),
    ]);
  });

  it('puts a ban on the room among the answers, never among the airs to choose', () => {
    const { airs } = viewOfBench({ mixes: [], surfaces: [] });
    expect(airs.map((air) => air.value)).not.toContain('not-in-this-room');
    expect(airs.map((air) => air.value)).toContain('window');
  });

  it('keeps an air that no table knows', () => {
    const { airs } = viewOfBench({ mixes: [], surfaces: [], room: { air: 'bellows' } });
    expect(airs.at(-1)).toEqual({ value: 'bellows', label: 'bellows (not known)', isOn: true });
  });

  it('keeps an air that no table knows when it is sent again', () => {
    const bench = { mixes: [{ parts: [{ ink: 'oil-relief' }] }], surfaces: [] };
    const hurricane = { ...bench, room: { air: 'hurricane' } };
    expect(benchOfForm(readForm(sent(page(viewOfBench(hurricane)))), known)).toEqual({
      bench: hurricane,
    });
  });

  it('leads from a usual bench to its sheet in the region that is chosen', () => {
    const { usual } = viewOfBench({ region: 'fr', mixes: [], surfaces: [] });
    for (const { href } of usual) expect(href).toMatch(/^\/sheet\?in=fr&mix=/);
  });

  it('ticks an ink that has only a number beside it', () => {
    const view = viewOfForm({ 'mix0.share.oil-relief': '100' });
    const picks = view.mixes[0]?.families.flatMap((family) => family.picks) ?? [];
    expect(picks.filter((pick) => pick.isOn).map((pick) => pick.value)).toEqual(['oil-relief']);
  });

  it('says each fault beside its field and in the list above, which leads to it', () => {
    const $ = page(
      viewOfForm({
        'mix0.ink': ['oil-relief', 'water-washable-oil'],
        'mix0.share.oil-relief': 'lots',
        'mix0.additive': 'cobalt-drier',
        'mix0.percent.cobalt-drier': '-2',
        people: 'a few',
        roomLength: '5',
        region: 'atlantis',
        do: 'sheet',
      }),
    );
    const links = $('.problems a').toArray();
    expect(links.length).toBe(5);
    for (const link of links) {
      const id = ($(link).attr('href') ?? '').slice(1);
      const field = $(`[id="${id}"]`);
      expect(field.length).toBe(1);
      const message = field.attr('aria-describedby') ?? `${id}-wrong`;
      expect($(`[id="${message}"]`).text()).toContain('What fits');
    }
    expect($('[id="mix0.share.oil-relief"]').attr('aria-invalid')).toBe('true');
    expect($('.problems').text()).toContain('Oil relief ink: share');
  });

  it('opens the folded part that holds something in use or something wrong', () => {
    const isOpen = (body: FormBody) => viewOfForm(body).isRareOpen;
    expect(isOpen({ surface: 'glass-slab' })).toBe(false);
    expect(isOpen({ surface: 'litho-stone' })).toBe(true);
    expect(isOpen({ typedSurface: 'pasta machine' })).toBe(true);
    const additives = (body: FormBody) => viewOfForm(body).mixes[0]?.isRareOpen;
    expect(additives({})).toBe(false);
    expect(additives({ 'mix0.typedAdditive': 'a drop of that' })).toBe(true);
  });

  it('has words for every field that can be wrong', () => {
    const fields = [
      '',
      'mixes',
      'mix3.on',
      'mix0.typedShare',
      'mix0.name',
      'mix1.ink',
      'mix0.additive',
    ];
    const names = Object.keys(sent(page(viewOfBench(wholeBench)))).filter(
      (name) => name !== 'do' && !name.endsWith('.dried') && name !== 'handKnown',
    );
    for (const field of [...fields, ...names]) {
      const problems: Problem[] = [{ path: '', field, got: 'this', accepts: 'that' }];
      const form = formOf(typedOf({ mixes: [], surfaces: [] }), known);
      const [problem] = benchView({ catalogue, words, form, problems }).problems;
      expect(files.messages).toHaveProperty([problem?.labelKey ?? '']);
    }
  });

  it('shows one mix more when asked, until there are as many as a bench holds', () => {
    expect(viewOfForm({ mixes: '1', do: 'more' })).toMatchObject({ mixCount: 2, mayAddMix: true });
    expect(viewOfForm({ mixes: '7', do: 'more' })).toMatchObject({ mixCount: 8, mayAddMix: false });
  });

  it('makes the sheet when Enter is pressed in a field', () => {
    const $ = page(viewOfBench(wholeBench));
    expect($('form.bench-form button, button[form=bench]').first().attr('value')).toBe('sheet');
  });

  it('needs no style and no script of its own', () => {
    const $ = page(viewOfBench(wholeBench));
    expect($('[style], style, script:not([src])').length).toBe(0);
  });
});
