import { describe, expect, it } from 'vitest';
import type { Asset, ViewFiles } from '../../../server/web/plugins/viewFiles.js';
import { makeRenderPage } from '../../../server/web/plugins/views.js';

const asset = (name: string, body: string): Asset => ({
  name,
  type: 'image/svg+xml',
  body: Buffer.from(body),
  version: 'v1',
});

const files = (page: string, layout = '{{{body}}}'): ViewFiles => ({
  layout,
  pages: new Map([['try', page]]),
  partials: new Map([['tile', '<b>{{name}}</b>']]),
  messages: { hello: 'Hello {n}', plain: 'Plain', odd: 'a & b' },
  assets: new Map([
    ['signs/disc.svg', asset('signs/disc.svg', '<svg id="disc"/>')],
    ['style.css', asset('style.css', 'a{}')],
  ]),
});

const render = (page: string, view: object, layout?: string) =>
  makeRenderPage(files(page, layout))('try', view);

describe('a page', () => {
  it('is rendered in the layout, with words, drawings, assets and partials', () => {
    const page =
      '{{t "hello" n=3}} {{t key}} {{{svg "signs/disc"}}} {{asset "style.css"}} {{#each all}}{{> tile}}{{/each}}{{#if (eq key "plain")}}!{{/if}}';
    expect(render(page, { key: 'plain', all: [{ name: 'x' }] }, '<i>{{key}}</i>{{{body}}}')).toBe(
      '<i>plain</i>Hello 3 Plain <svg id="disc"/> /assets/style.css?v&#x3D;v1 <b>x</b>!',
    );
  });

  it('has what never changes put in once, escaped where it has to be', () => {
    expect(render('{{t "plain"}} <i title="{{t "odd"}}">{{{t "odd"}}}</i>', {})).toBe(
      'Plain <i title="a &amp; b">a & b</i>',
    );
  });

  it('draws the same view once', () => {
    let asked = 0;
    const view = {
      get name() {
        asked += 1;
        return 'x & y';
      },
    };
    const page = '{{once "tile" view}} {{once "tile" view}} {{once "tile" other}}';
    const text = render(page, { view, other: { name: 'z' } });
    expect(text).toBe('<b>x &amp; y</b> <b>x &amp; y</b> <b>z</b>');
    expect(asked).toBe(1);
  });

  it('escapes what it is given', () => {
    expect(render('{{name}}', { name: '<b>&"\'' })).toBe('&lt;b&gt;&amp;&quot;&#x27;');
  });

  it('fails on a field that a presenter forgot', () => {
    expect(() => render('{{deep}}', {})).toThrow(/deep/);
    expect(() => render('{{t key}}', { key: 'nothing' })).toThrow(/no words for "nothing"/);
    expect(() => render('{{{svg key}}}', { key: 'nothing' })).toThrow(/no drawing called/);
  });

  it('has to be there', () => {
    expect(() => makeRenderPage(files(''))('other', {})).toThrow(/no page other/);
  });
});

describe('a template that is wrong stops the start, by name', () => {
  it.each([
    ['{{#if x}}', /views\/pages\/try\.hbs: .*Parse error/s],
    ['{{shout name}}', /views\/pages\/try\.hbs: .*shout/],
    ['{{t "nothing"}}', /views\/pages\/try\.hbs: no words for "nothing"/],
    ['{{#if (eq (t "nothing") 1)}}{{/if}}', /no words for "nothing"/],
    ['{{{svg "nothing"}}}', /no drawing called "nothing"/],
    ['{{asset "nothing.css"}}', /no asset called "nothing\.css"/],
    ['{{once "nothing" this}}', /no partial called "nothing"/],
    ['{{once name this}}', /no partial called ""/],
    ['{{#each all}}{{> nothing}}{{/each}}', /no partial called "nothing"/],
  ])('%s', (page, message) => {
    expect(() => makeRenderPage(files(page))).toThrow(message);
  });
});
