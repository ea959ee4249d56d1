import type { Bench, Flag, Mix, Unknown } from '../types.js';
import type { Book, PresentKind } from '../book/book.js';
import { compare } from '../book/compare.js';

/** What is present, before any plan: tags, whatever nobody knows, and doses out of the usual. */
export interface BenchFacts {
  readonly tags: ReadonlySet<string>;
  /** Rows of the tables that are present (`ink.oil-relief`); each brings its own tags. */
  readonly rows: ReadonlySet<string>;
  readonly unknown: readonly Unknown[];
  readonly flags: readonly Flag[];
  /** Surfaces named, and those they bring along. */
  readonly surfaces: readonly string[];
}

const GROUP = 6;

/** Reads a bench against the tables. Only ever adds tags: that is what makes the rules monotone. */
export const tagBench = (book: Book, bench: Bench): BenchFacts => {
  const { settledBy } = book.catalogue.sds;
  const tags = new Set<string>(['always']);
  const rows = new Set<string>();
  const unknown: Unknown[] = [];
  const flags: Flag[] = [];
  /** Whether a table has the row; then it is present with all its tags. */
  const isPresent = (kind: PresentKind, id: string): boolean => {
    const found = book.presence[kind].get(id);
    if (found === undefined) return false;
    rows.add(found.row);
    for (const tag of found.tags) tags.add(tag);
    return true;
  };
  const notKnown = (kind: Unknown['kind'], id: string): void => {
    tags.add(`unknown.${kind}`);
    if (!unknown.some((each) => each.kind === kind && each.id === id)) {
      unknown.push({ kind, id, sdsSection: settledBy[kind] });
    }
  };
  const meet = (kind: 'ink' | 'additive' | 'equipment' | 'surface', id: string): void => {
    if (!isPresent(kind, id)) notKnown(kind, id);
  };

  for (const mix of bench.mixes) {
    for (const part of mix.parts) meet('ink', part.ink);
    for (const dose of mix.additives) meet('additive', dose.additive);
    if (mix.dried) tags.add('state.dried');
    for (const flag of doseFlags(book, mix)) {
      flags.push(flag);
      tags.add('dose.above-usual');
      if (flag.kind === 'dose-above-highest') tags.add('dose.above-highest');
    }
  }
  const surfaces = withBrought(book, bench);
  for (const id of surfaces) meet('surface', id);
  for (const id of bench.equipment) if (!isPresent('other', id)) meet('equipment', id);

  for (const id of bench.agentsAtHand ?? []) {
    if (!isPresent('other', id) && !book.agentIndex.has(id)) {
      unknown.push({ kind: 'agent', id, sdsSection: settledBy.agent });
    }
  }
  for (const { agent } of bench.uses) {
    tags.add('state.used');
    if (!isPresent('agent', agent) && !isPresent('other', agent)) notKnown('agent', agent);
  }

  for (const { agent } of bench.bottles) {
    if (!book.agentIndex.has(agent)) notKnown('agent', agent);
  }

  if (bench.people.under16) tags.add('person.under16');
  for (const flag of bench.people.flags) {
    if (book.people.has(flag)) tags.add(`person.${flag}`);
    else notKnown('person', flag);
  }
  if ((bench.people.count ?? 1) > 1) tags.add('people.several');
  if ((bench.people.count ?? 1) >= GROUP) tags.add('people.group');
  const air = bench.room?.air;
  if (air !== undefined && book.heightOf('air', air) < 0) {
    unknown.push({ kind: 'air', id: air, sdsSection: settledBy.air });
  }
  return { tags, rows, unknown, flags, surfaces };
};

const withBrought = (book: Book, bench: Bench): readonly string[] => {
  const named = new Set(bench.surfaces);
  for (const mix of bench.mixes) for (const id of mix.on ?? []) named.add(id);
  for (const id of [...named]) {
    for (const brought of book.surfaces.get(id)?.surface.brings ?? []) named.add(brought);
  }
  return [...named].sort(compare);
};

const doseFlags = (book: Book, mix: Mix): readonly Flag[] => {
  const doses = [
    ...mix.additives.map((dose) => ({
      row: book.additives.get(dose.additive),
      percent: dose.percent,
      subject: `additive.${dose.additive}`,
    })),
    ...mix.parts.map((part) => ({
      row: book.inks.get(part.ink),
      percent: part.share,
      subject: `ink.${part.ink}`,
    })),
  ];
  return doses.flatMap(({ row, percent, subject }): readonly Flag[] => {
    const usual = row?.usualPercent;
    const highest = row?.highestPercent;
    if (percent === undefined || usual === undefined || highest === undefined) return [];
    if (percent <= usual.high) return [];
    return [
      {
        kind: percent > highest ? 'dose-above-highest' : 'dose-above-usual',
        subject,
        values: { what: subject, percent, usual, highest, mix: mix.id },
      },
    ];
  });
};
