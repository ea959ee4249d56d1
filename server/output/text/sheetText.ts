import { PHASES, type Bench, type Phase, type ScaleId, type Sheet } from '../../reasoning/index.js';
import { inside, joined, longDate, opening, type Words } from '../../words/index.js';
import { COLUMNS, wrapped } from './wrapped.js';

/** What stands on the sheet beside what was reasoned. */
export interface SheetImprint {
  /** From "/sheet?" on. */
  readonly address: string;
  /** ISO date. */
  readonly madeOn: string;
  readonly version: string;
}

/** The sheet as plain text: the same words as on the page, a box to tick, the reasons by their ids. */
export function sheetText(sheet: Sheet, words: Words, imprint: SheetImprint): string {
  const region = sheet.bench.region;
  const blocks = [
    headText(sheet, words),
    words
      .defer(region)
      .map((one) => wrapped(one))
      .join('\n'),
    answersText(sheet, words),
    stopsText(sheet, words),
    ...PHASES.map((phase) => phaseText(sheet, phase, words)),
    numbersText(sheet, words),
    swapsText(sheet, words),
    imprintText(imprint, words, words.name('region', region)),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

const title = (text: string, rule: string): string => `${text}\n${rule.repeat(text.length)}`;

function headText(sheet: Sheet, words: Words): string {
  const { bench } = sheet;
  const mixes = bench.mixes.map((mix) => wrapped(mixText(mix, words), '- '));
  const surfaces = bench.surfaces.map((id) => inside(words.short('surface', id)));
  const on =
    surfaces.length > 0
      ? [wrapped(words.message('text.on', { surfaces: joined(surfaces) }), '  ')]
      : [];
  return [title(words.message('text.title'), '='), ...mixes, ...on].join('\n');
}

function mixText(mix: Bench['mixes'][number], words: Words): string {
  const percent = (much: number | undefined) => (much === undefined ? '' : ` ${much} %`);
  const things = [
    ...mix.parts.map((one) => `${words.short('ink', one.ink)}${percent(one.share)}`),
    ...mix.additives.map(
      (one) => `${words.short('additive', one.additive)}${percent(one.percent)}`,
    ),
  ];
  const name = mix.name === undefined ? '' : `${mix.name}: `;
  return `${name}${joined(things)}${mix.dried ? words.message('text.dried') : ''}`;
}

function answersText(sheet: Sheet, words: Words): string {
  const level = (scale: ScaleId): string => {
    const reached = sheet.levels.find((one) => one.scale === scale);
    return reached ? words.level(scale, reached.level) : '';
  };
  const agents = sheet.plan.agents.map((id) => inside(words.short('agent', id)));
  const gloves = sheet.gloves.materials.map((one) => inside(words.name('material', one.id)));
  const rags = sheet.streams.map((one) => inside(words.stream(one.id).name));
  const answers = [
    ['answer.takesOff', agents.join(', then ') || words.message('text.nothing')],
    ['answer.air', level('air')],
    ['answer.gloves', gloves.length > 0 ? joined(gloves, 'or') : level('gloves')],
    ['answer.rags', rags.length > 0 ? joined(rags) : level('rags')],
  ].map(([key = '', answer = '']) => [`${words.message(key)}:`, opening(answer)] as const);
  const width = Math.max(...answers.map(([label]) => label.length)) + 1;
  return answers.map(([label, answer]) => wrapped(answer, label.padEnd(width))).join('\n');
}

function stopsText(sheet: Sheet, words: Words): string {
  return sheet.neverTogether.map((one) => wrapped(words.never(one.id), '!! ')).join('\n');
}

function phaseText(sheet: Sheet, phase: Phase, words: Words): string {
  const lines = sheet.lines
    .filter((line) => line.phase === phase)
    .map((line) => {
      const { head, rest } = words.line(line, sheet.bench.region);
      return wrapped(`${head} ${rest} (${line.because.join(', ')})`, '[ ] ');
    });
  return lines.length === 0
    ? ''
    : [title(words.message(`phase.${phase}`), '-'), ...lines].join('\n');
}

function numbersText(sheet: Sheet, words: Words): string {
  const { region, numbers, poison, checkedOn, checkedIn } = words.emergency(sheet.bench.region);
  const lines = [...numbers, ...poison].map(({ name, number, hours }) =>
    wrapped(`${number}  ${name}${hours === undefined ? '' : ` (${hours})`}`, '  '),
  );
  const checked = words.message('aid.where', {
    region,
    date: longDate(checkedOn),
    in: inside(checkedIn).replace(/\.$/, ''),
  });
  return [title(words.message('aid.numbers'), '-'), ...lines, wrapped(checked, '  ')].join('\n');
}

function swapsText(sheet: Sheet, words: Words): string {
  const lines = sheet.swaps.map((swap) => wrapped(words.swap(swap), '- '));
  return lines.length === 0 ? '' : [title(words.message('swap.title'), '-'), ...lines].join('\n');
}

function imprintText(
  { address, madeOn, version }: SheetImprint,
  words: Words,
  region: string,
): string {
  const made = { date: longDate(madeOn), region, name: words.message('app.name'), version };
  return [
    '-'.repeat(COLUMNS),
    wrapped(words.message('text.made', made)),
    words.message('text.rules'),
    address,
  ].join('\n');
}
