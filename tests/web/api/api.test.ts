import fc from 'fast-check';
import type { FastifyInstance } from 'fastify';
import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DryingAnswer } from '../../../server/web/api/dryingClass.js';
import { FlammableAnswer } from '../../../server/web/api/flammableClass.js';
import { ProblemAnswer } from '../../../server/web/api/problemAnswer.js';
import { SheetAnswer } from '../../../server/web/api/sheetAnswer.js';
import { sheetJson } from '../../../server/web/api/sheetJson.js';
import { anApp } from '../../support/anApp.js';
import { anyBench } from '../../support/benchInputs.js';
import { everyBench } from '../../support/everyBench.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

let app: FastifyInstance;
beforeAll(async () => {
  app = await anApp();
});
afterAll(async () => {
  await app.close();
});

/** What came back, of which nothing is known yet. */
const bodyOf = async (answer: Promise<{ body: unknown }> | supertest.Test): Promise<unknown> =>
  (await answer).body as unknown;

const post = (url: string, body: unknown) =>
  supertest(app.server)
    .post(url)
    .send(body as object);

const oilBench = {
  region: 'uk',
  mixes: [{ parts: [{ ink: 'oil-relief', share: 100 }] }],
  surfaces: ['glass-slab'],
};

describe('POST /api/sheet', () => {
  it('answers with the keys that were promised', async () => {
    const body = await bodyOf(post('/api/sheet', oilBench).expect(200));
    expect(body).toMatchObject({
      bench: { region: 'uk', surfaces: ['glass-slab'] },
      levels: { air: expect.any(String) as string, people: expect.any(String) as string },
      routes: [{ surface: 'glass-slab', passes: [{ do: 'scrape' }, { do: 'agent' }, {}, {}] }],
      rags: { streams: [{ route: 'wet-can', selfHeating: true }] },
      neverTogether: [],
      unknown: [],
    });
  });

  it('has the shape that it describes, for every bench', () => {
    for (const bench of everyBench) {
      const answer: unknown = JSON.parse(JSON.stringify(sheetJson(reasoner.sheet(bench), words)));
      expect(SheetAnswer.safeParse(answer).error?.issues).toBeUndefined();
    }
  });

  it('explains every reason it names, with its sources', async () => {
    const body = await bodyOf(post('/api/sheet', oilBench).expect(200));
    const { lines, rules, sources } = SheetAnswer.parse(body);
    for (const id of lines.flatMap((line) => [...line.because, ...line.folded])) {
      expect(rules[id]?.sources.map((source) => sources[source]?.id)).toEqual(rules[id]?.sources);
    }
  });

  it('gives the same for an extender as a part and as an additive', async () => {
    const mixes = [
      {
        parts: [
          { ink: 'oil-relief', share: 70 },
          { ink: 'transparent-base', share: 30 },
        ],
      },
      {
        parts: [{ ink: 'oil-relief', share: 100 }],
        additives: [{ additive: 'transparent-base', percent: 30 }],
      },
      {
        parts: [{ ink: 'oil-relief', share: 70 }],
        additives: [{ additive: 'transparent-base', percent: 30 }],
      },
    ];
    const answers = await Promise.all(
      mixes.map((mix) => post('/api/sheet', { ...oilBench, mixes: [mix] }).expect(200)),
    );
    for (const answer of answers) expect(answer.body).toEqual(answers[0]?.body);
  });

  it('takes a bench with nothing on it, unknown things, and any bench that can be typed', async () => {
    await post('/api/sheet', { mixes: [], surfaces: [] }).expect(200);
    await fc.assert(
      fc.asyncProperty(anyBench, async (bench) => {
        const answer = await app.inject({ method: 'POST', url: '/api/sheet', payload: bench });
        expect(answer.statusCode).toBe(200);
      }),
      { numRuns: 50 },
    );
  });

  it('takes how many are under 16 as well as whether anyone is', async () => {
    const bench = async (under16: unknown) =>
      (await post('/api/sheet', { ...oilBench, people: { under16 } }).expect(200)).body as {
        bench: { people: unknown };
      };
    expect((await bench(3)).bench.people).toMatchObject({ under16: true });
    expect((await bench(0)).bench.people).toMatchObject({ under16: false });
  });

  it('lets what a bottle says replace the table', async () => {
    const bottles = [{ agent: 'white-spirit', sdsDate: '2026-01-31', flashPointC: 62 }];
    const body = await bodyOf(post('/api/sheet', { ...oilBench, bottles }).expect(200));
    expect(body).toMatchObject({ bench: { bottles } });
  });

  it.each([
    ['an unknown region', { region: 'atlantis' }, '/region', /atlantis/, /one of .*uk/],
    [
      'a negative share',
      { mixes: [{ parts: [{ ink: 'a', share: -1 }] }] },
      '/mixes/0/parts/0/share',
      /^-1$/,
      /0 to 100/,
    ],
    [
      'a letter for a number',
      { mixes: [{ parts: [{ ink: 'a', share: 'x' }] }] },
      '/mixes/0/parts/0/share',
      /^"x"$/,
      /a number/,
    ],
    [
      '10,000 parts',
      { mixes: [{ parts: Array(10_000).fill({ ink: 'a' }) }] },
      '/mixes/0/parts',
      /10,000/,
      /up to 12/,
    ],
    [
      'shares that are not 100',
      { mixes: [{ parts: [{ ink: 'a', share: 40 }] }] },
      '/mixes/0/parts',
      /40/,
      /up to 100/,
    ],
    [
      'an ink without a name',
      { mixes: [{ parts: [{ ink: ' ' }] }] },
      '/mixes/0/parts/0/ink',
      /^" "$/,
      /name of an ink/,
    ],
    [
      'an ink of structure letters',
      { mixes: [{ parts: [{ ink: ',;' }] }] },
      '/mixes/0/parts/0/ink',
      /,;/,
      /name of an ink/,
    ],
    [
      'no surfaces',
      { surfaces: undefined },
      '/surfaces',
      /nothing/,
      /^a list of up to 40 surfaces$/,
    ],
    ['half a person', { people: { count: 1.5 } }, '/people/count', /1\.5/, /whole number/],
    ['a misspelt key', { aditives: [] }, '/aditives', /not known/, /openapi/],
    ['a mix that is no object', { mixes: ['oil'] }, '/mixes/0', /"oil"/, /a mix/],
    ['no object', undefined, '', /nothing/, /a bench/],
  ])(
    'tells %s with its path, what it got and what it accepts',
    async (_, edit, path, got, accepts) => {
      const body = edit && { ...oilBench, ...edit };
      const answer = await post('/api/sheet', body).expect(422);
      expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
      const { errors } = ProblemAnswer.parse(answer.body);
      expect(errors[0]?.path).toBe(path);
      expect(errors[0]?.got).toMatch(got);
      expect(errors[0]?.accepts).toMatch(accepts);
    },
  );

  it('says 400 to what cannot be read', async () => {
    for (const text of ['{', 'null{', '{"mixes":[', '\u0000']) {
      const answer = await supertest(app.server)
        .post('/api/sheet')
        .type('json')
        .send(text)
        .expect(400);
      expect(ProblemAnswer.parse(answer.body)).toMatchObject({
        status: 400,
        errors: [{ path: '' }],
      });
    }
    const proto = await supertest(app.server)
      .post('/api/sheet')
      .type('json')
      .send('{"__proto__":{}}')
      .expect(400);
    expect(ProblemAnswer.parse(proto.body).errors[0]?.accepts).toContain('no key "__proto__"');
    await supertest(app.server).post('/api/sheet').type('json').send('').expect(400);
    const form = await supertest(app.server)
      .post('/api/sheet')
      .type('form')
      .send('mixes=1')
      .expect(415)
      .expect('content-type', /^application\/problem\+json/);
    expect(ProblemAnswer.parse(form.body).errors[0]?.accepts).toContain('application/json');
    await supertest(app.server).post('/api/sheet').type('text/plain').send('x').expect(415);
    await supertest(app.server)
      .post('/api/sheet')
      .type('json')
      .send(`"${'x'.repeat(2_000_000)}"`)
      .expect(413);
  });

  it('answers any JSON at all without a fault of its own', async () => {
    const keys = fc.constantFrom(
      'mixes',
      'parts',
      'ink',
      'share',
      'surfaces',
      'room',
      'people',
      '__proto__',
    );
    const soup = fc.letrec((tie) => ({
      value: fc.oneof(
        { maxDepth: 4 },
        fc.jsonValue({ maxDepth: 1 }),
        fc.array(tie('value'), { maxLength: 3 }),
        fc.dictionary(keys, tie('value'), { maxKeys: 4 }),
      ),
    })).value;
    await fc.assert(
      fc.asyncProperty(soup, async (body) => {
        const answer = await app.inject({
          method: 'POST',
          url: '/api/sheet',
          headers: { 'content-type': 'application/json' },
          payload: JSON.stringify(body),
        });
        expect([200, 400, 422]).toContain(answer.statusCode);
      }),
      { numRuns: 300 },
    );
  });
});

describe('POST /api/calc/flammable-class', () => {
  it('gives the class under each system, with the words of its code', async () => {
    const body = await bodyOf(
      post('/api/calc/flammable-class', {
        flashPointC: 39,
        boilingPointC: 154,
      }),
    );
    const category = {
      category: 3,
      code: 'H226',
      signal: 'Warning',
      text: 'Flammable liquid and vapour.',
    };
    expect(body).toEqual({
      clp: category,
      ghs: category,
      osha: category,
      nfpa: { class: 'II' },
      because: ['code.H226'],
    });
  });

  it('gives none where a system has none, and has the shape it describes', async () => {
    for (const flashPointC of [-20, 10, 40, 61, 70, 94]) {
      const body = await bodyOf(
        post('/api/calc/flammable-class', {
          flashPointC,
        }).expect(200),
      );
      expect(FlammableAnswer.safeParse(body).error).toBeUndefined();
    }
    const body = await bodyOf(
      post('/api/calc/flammable-class', {
        flashPointC: 70,
      }),
    );
    expect(body).toMatchObject({ clp: { category: null, signal: null }, ghs: { category: 4 } });
  });

  it('wants a flash point', async () => {
    const body = await bodyOf(
      post('/api/calc/flammable-class', {
        boilingPointC: 100,
      }).expect(422),
    );
    expect(body).toMatchObject({
      code: 'BODY_WRONG',
      errors: [{ path: '/flashPointC', got: 'nothing' }],
    });
  });
});

describe('POST /api/calc/drying-class', () => {
  const ask = async (body: object) =>
    DryingAnswer.parse((await post('/api/calc/drying-class', body).expect(200)).body);
  const classes = (answer: DryingAnswer) => answer.bySchemes.map((one) => one.class);

  it('gives the class by every scheme, and the careful answer for rags', async () => {
    const answer = await ask({ iodineValue: 128 });
    expect(answer).toMatchObject({ oil: null, rags: { selfHeating: true } });
    expect(answer.bySchemes).toHaveLength(catalogue.oils.schemes.length);
    expect(new Set(classes(answer))).toEqual(new Set(['semi-drying']));
    expect((await ask({ iodineValue: 10 })).rags.selfHeating).toBe(false);
  });

  it('takes the published range of a named oil, and a measured value before it', async () => {
    const linseed = await ask({ oil: 'Linseed oil' });
    expect(linseed).toMatchObject({ oil: { id: 'linseed' }, rags: { selfHeating: true } });
    expect(linseed.because[0]).toBe('oil.linseed');
    expect((await ask({ oil: 'linseed', iodineValue: 170 })).bySchemes[0]?.classAtLow).toBe(
      'drying',
    );
  });

  it('goes by the name where the figure does not decide, and by the worst where nothing is known', async () => {
    expect(new Set(classes(await ask({ oil: 'tung', iodineValue: 20 })))).toEqual(
      new Set(['drying']),
    );
    const unknown = await ask({ oil: 'oil from the shed' });
    expect(unknown).toMatchObject({ oil: null, rags: { selfHeating: true } });
    expect(new Set(classes(unknown))).toEqual(new Set(['unknown']));
  });

  it('has a row for each reason', async () => {
    const { because } = await ask({ oil: 'tung' });
    expect(because.filter((id) => !words.row(id))).toEqual([]);
  });

  it('wants one or the other', async () => {
    const body = await bodyOf(post('/api/calc/drying-class', {}).expect(422));
    expect(body).toMatchObject({
      errors: [
        { path: '', got: 'an object', accepts: expect.stringContaining('iodine') as string },
      ],
    });
    await post('/api/calc/drying-class', { iodineValue: 'x' }).expect(422);
  });
});

describe('every body', () => {
  it('of a wrong type is told what is accepted, in our words', async () => {
    const { paths } = app.swagger() as unknown as { paths: Record<string, Described> };
    const posts = Object.entries(paths).filter(([path]) => path.startsWith('/api/'));
    expect(posts.length).toBe(17);
    for (const [path, { post: described }] of posts) {
      const { properties } = described.requestBody.content['application/json'].schema;
      const keys = Object.keys(properties ?? {});
      expect([path, keys.length > 0]).toEqual([path, true]);
      const bodies = [[], ...keys.flatMap((key) => [{ [key]: [{}] }, { [key]: null }])];
      for (const body of bodies) {
        const answer = await app.inject({ method: 'POST', url: path, payload: body as object });
        expect([path, answer.statusCode]).toEqual([path, 422]);
        for (const { accepts } of ProblemAnswer.parse(answer.json()).errors) {
          expect(accepts).not.toMatch(/invalid|expected|received|input/i);
        }
      }
    }
  });

  it.each([
    ['flammable-class', { flashPointC: 'x' }, 'a number of degrees Celsius, -150 to 1,000'],
    ['waste-category', { region: 'us', kg: 'x' }, 'a number of kilograms in a calendar month'],
    ['ignitable-waste', { region: 'us', selfHeating: 1 }, 'true or false'],
  ])('of %s says its unit and bounds', async (name, body, accepts) => {
    const answer = await post(`/api/calc/${name}`, body).expect(422);
    expect(ProblemAnswer.parse(answer.body).errors[0]?.accepts).toContain(accepts);
  });
});

/** As much of a route's description as is looked at here. */
interface Described {
  readonly post: {
    readonly requestBody: {
      readonly content: {
        readonly 'application/json': { readonly schema: { readonly properties?: object } };
      };
    };
  };
}

describe('GET /api/openapi.json', () => {
  it('describes every route of the interface from the schemas that check it', async () => {
    const body = await bodyOf(supertest(app.server).get('/api/openapi.json').expect(200));
    const { openapi, paths } = body as {
      openapi: string;
      paths: Record<string, { post?: unknown }>;
    };
    expect(openapi).toMatch(/^3\./);
    expect(Object.keys(paths).sort()).toEqual([
      '/api/air',
      '/api/calc/air-changes',
      '/api/calc/convert',
      '/api/calc/dilution',
      '/api/calc/drying-class',
      '/api/calc/evaporation',
      '/api/calc/flammable-class',
      '/api/calc/flammable-limit',
      '/api/calc/glove-level',
      '/api/calc/glove-material',
      '/api/calc/hydrocarbon-limit',
      '/api/calc/ignitable-waste',
      '/api/calc/mixture',
      '/api/calc/purge',
      '/api/calc/waste-category',
      '/api/calc/wipes',
      '/api/sheet',
      '/sheet.json',
    ]);
    expect(JSON.stringify(paths['/api/sheet'])).toContain('"agentsAtHand"');
  });
});
