/**
 * Benchmarks of the bars that hold on any machine as times or ratios. Run by hand: `npm run bench`.
 * Every figure is measured in this run; figures to compare are measured one after the other.
 * Sheets and pages are those of the compiled program, as people run it.
 */
import Handlebars from 'handlebars';
import fastify from 'fastify';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { loadCatalogue } from '../../server/catalogue/index.js';
import type * as Reasoning from '../../server/reasoning/index.js';
import type { AirInput, BenchInput, Catalogue } from '../../server/reasoning/index.js';
import type * as App from '../../server/web/app.js';
import type * as WordsModule from '../../server/words/index.js';
import { readMessages } from '../../server/web/plugins/viewFiles.js';
import { planOf } from '../../server/reasoning/sheet/planOf.js';
import { EVERY_SURFACE, assessed, benchOf, book } from '../support/everyMix.js';
import { makeMilp } from '../support/milp.js';
import { jobsOf } from '../support/plainPlanner.js';

interface Row {
  readonly what: string;
  readonly figure: string;
  readonly bar: string;
}

const rules = new URL('../../rules/', import.meta.url);

const viewsFolder = fileURLToPath(new URL('../../views/', import.meta.url));

const compiled = async (path: string): Promise<unknown> =>
  import(new URL(`../../dist/${path}`, import.meta.url).href);
const { makeReasoner } = (await compiled('reasoning/index.js')) as typeof Reasoning;
const { buildApp } = (await compiled('web/app.js')) as typeof App;
const { makeMessages, makeWords } = (await compiled('words/index.js')) as typeof WordsModule;

const TEN_THINGS: BenchInput = {
  region: 'uk',
  mixes: [
    {
      parts: [
        { ink: 'oil-relief', share: 60 },
        { ink: 'transparent-base', share: 40 },
      ],
      additives: [
        { additive: 'cobalt-drier', percent: 2 },
        { additive: 'magnesium-carbonate', percent: 3 },
      ],
    },
  ],
  surfaces: ['glass-slab', 'lino-block', 'roller-polyurethane', 'steel-tools'],
  equipment: ['cutting-tools', 'etching-press'],
};

/** Milliseconds of each run, sorted; a third as many runs go before to warm up. */
const timed = (runs: number, work: () => unknown): readonly number[] => {
  for (let run = 0; run < runs / 3; run += 1) work();
  const times = Array.from({ length: runs }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  });
  return times.sort((a, b) => a - b);
};

const at = (times: readonly number[], share: number): number =>
  times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? Number.NaN;

const ms = (value: number): string => `${value.toFixed(3)} ms`;

const reasoningRows = (catalogue: Catalogue): readonly Row[] => {
  const reasoner = makeReasoner(catalogue);
  const ten = timed(3000, () => reasoner.sheet(TEN_THINGS));
  const grown = [8, 16, 32].map((things) => {
    const bench: BenchInput = {
      mixes: [{ parts: catalogue.inks.slice(0, 2).map((ink) => ({ ink: ink.id })) }],
      surfaces: catalogue.surfaces.slice(0, things - 2).map((surface) => surface.id),
    };
    return at(
      timed(600, () => reasoner.sheet(bench)),
      0.5,
    );
  });
  const [eight = 0, , thirtyTwo = 0] = grown;
  const twice = makeReasoner({ ...catalogue, rules: [...catalogue.rules, ...again(catalogue)] });
  const ruled = at(
    timed(3000, () => twice.sheet(TEN_THINGS)),
    0.5,
  );
  return [
    { what: 'sheet of 10 things, median', figure: ms(at(ten, 0.5)), bar: '0.300 ms' },
    { what: 'sheet of 10 things, p99', figure: ms(at(ten, 0.99)), bar: '2.000 ms' },
    {
      what: '32 things against 8 (4 times as many)',
      figure: `${(thirtyTwo / eight).toFixed(2)} times`,
      bar: '4 times',
    },
    {
      what: 'twice the rules against once',
      figure: `${(ruled / at(ten, 0.5)).toFixed(2)} times`,
      bar: '2 times',
    },
  ];
};

/** A day of twenty uses, one agent or several in turn, every other one timed. */
const dayOf = (agents: readonly string[]): AirInput => ({
  region: 'us',
  room: { volumeM3: 60, air: 'exhaust-fan' },
  horizonMin: 1440,
  uses: Array.from({ length: 20 }, (_, place) => ({
    agent: agents[place % agents.length] ?? '',
    ml: 10 + place,
    startMin: place * 20,
    ...(place % 2 === 0 ? {} : { minutes: 10 }),
  })),
});

const airRows = (catalogue: Catalogue): readonly Row[] => {
  const { air } = makeReasoner(catalogue);
  const median = (day: AirInput): string =>
    ms(
      at(
        timed(100, () => air(day)),
        0.5,
      ),
    );
  return [
    {
      what: 'air: 20 uses of one agent, 24 h, with ranges and both inversions',
      figure: median(dayOf(['white-spirit'])),
      bar: '1.000 ms',
    },
    {
      what: 'air: 20 uses of three agents, the same',
      figure: median(dayOf(['white-spirit', 'acetone', 'turpentine'])),
      bar: '1.000 ms',
    },
  ];
};

const again = (catalogue: Catalogue): Catalogue['rules'] =>
  catalogue.rules.map((rule) => ({ ...rule, id: `${rule.id}-again` }));

const plannerRows = async (catalogue: Catalogue): Promise<readonly Row[]> => {
  const worst: BenchInput = {
    mixes: catalogue.inks.map((ink) => ({ parts: [{ ink: ink.id }] })),
    surfaces: EVERY_SURFACE,
  };
  const ours = at(
    timed(60, () => planOf(book, assessed(worst))),
    0.5,
  );
  const jobs = jobsOf(benchOf(worst));
  const { solve } = await makeMilp();
  const theirs = at(
    timed(3, () => solve(jobs)),
    0.5,
  );
  return [
    { what: 'plan of all inks on all surfaces', figure: ms(ours), bar: '20.000 ms' },
    {
      what: 'the same plan against a MILP solver',
      figure: `${(theirs / ours).toFixed(1)} times as fast`,
      bar: '',
    },
  ];
};

const pageRows = async (catalogue: Catalogue): Promise<readonly Row[]> => {
  const app = await buildApp({
    catalogue,
    reasoner: makeReasoner(catalogue),
    words: makeWords(catalogue, makeMessages(readMessages(viewsFolder))),
    clock: { today: () => '2026-11-25' },
    version: 'bench',
    viewsFolder,
  });
  const address = (run: number): string =>
    `/sheet?in=uk&mix=oil-relief:60,transparent-base:40/cobalt-drier:2&on=glass-slab,lino-block,roller-polyurethane,steel-tools&people=${String(run)}`;
  const page = await app.inject({ url: address(1) });
  const bare = fastify();
  const template = Handlebars.compile('{{#each lines}}<p>{{this}}</p>{{/each}}');
  // The same bytes with nothing to escape, in lines as long as a sheet's.
  const lines = page.body.replace(/[&<>"'`=]/g, 'x').match(/[^]{1,200}/g) ?? [];
  bare.get('/', (_, reply) => reply.type('text/html').send(template({ lines })));
  await bare.ready();
  const fresh = await perSecond(600, (run) => app.inject({ url: address(run + 2) }));
  const same = await perSecond(2000, () => app.inject({ url: address(1) }));
  const plain = await perSecond(2000, () => bare.inject({ url: '/' }));
  await Promise.all([app.close(), bare.close()]);
  return [
    {
      what: 'sheet computed and rendered, against a bare page of the same bytes',
      figure: `${String(Math.round((100 * fresh) / plain))} %`,
      bar: '40 %',
    },
    {
      what: 'the same address again, against the bare page',
      figure: `${String(Math.round((100 * same) / plain))} %`,
      bar: '',
    },
  ];
};

const perSecond = async (
  runs: number,
  work: (run: number) => PromiseLike<unknown>,
): Promise<number> => {
  for (let run = 0; run < runs / 4; run += 1) await work(run);
  const from = performance.now();
  for (let run = 0; run < runs; run += 1) await work(run + runs);
  return (1000 * runs) / (performance.now() - from);
};

const print = (rows: readonly Row[]): void => {
  for (const { what, figure, bar } of rows) {
    process.stdout.write(`${what.padEnd(70)} ${figure.padStart(20)}   ${bar}\n`);
  }
};

const catalogue = loadCatalogue(rules);
process.stdout.write(
  `Node ${process.version}, ${String(cpus().length)} x ${cpus()[0]?.model ?? 'unknown'}\n`,
);
print([{ what: 'what', figure: 'measured', bar: 'bar' }]);
print(reasoningRows(catalogue));
print(airRows(catalogue));
print(await plannerRows(catalogue));
print(await pageRows(catalogue));
