import type { Bench, Flag, Mix, Unknown } from '../types.js';
import type { Book } from '../book/book.js';

/** What is present, before any plan: tags, whatever nobody knows, and doses out of the usual. */
export interface BenchFacts {
  readonly tags: ReadonlySet<string>;
  /** Tag to the rows that bear it (`mark.plain-oil` to `ink.oil-relief`). */
  readonly bearers: ReadonlyMap<string, readonly string[]>;
  readonly unknown: readonly Unknown[];
  readonly flags: readonly Flag[];
  /** Surfaces named, and those they bring along. */
  readonly surfaces: readonly string[];
}

const GROUP = 6;

/** Reads a bench against the tables. Only ever adds tags: that is what makes the rules monotone. */
export const tagBench = (book: Book, bench: Bench): BenchFacts => {
  const { settledBy } = book.catalogue.sds;
  const bearers = new Map<string, string[]>();
  const unknown: Unknown[] = [];
  const flags: Flag[] = [];
  const bear = (tag: string, row: string): void => {
    const rows = bearers.get(tag);
    if (rows === undefined) bearers.set(tag, [row]);
    else if (!rows.includes(row)) rows.push(row);
  };
  const present = (kind: string, id: string, marks: readonly string[]): void => {
    const row = `${kind}.${id}`;
    bear(row, row);
    for (const mark of marks) bear(`mark.${mark}`, row);
  };
  const notKnown = (kind: Unknown['kind'], id: string): void => {
    bear(`unknown.${kind}`, `${kind}.${id}`);
    if (!unknown.some((each) => each.kind === kind && each.id === id)) {
      unknown.push({ kind, id, sdsSection: settledBy[kind] });
    }
  };
  const meet = (kind: 'ink' | 'additive' | 'equipment' | 'surface', id: string): void => {
    const row = kind === 'surface' ? book.surfaces.get(id)?.surface : tableOf(book, kind).get(id);
    if (row === undefined) notKnown(kind, id);
    else present(kind, id, row.marks);
  };

  bear('always', 'always');
  for (const mix of bench.mixes) {
    for (const part of mix.parts) meet('ink', part.ink);
    for (const dose of mix.additives) meet('additive', dose.additive);
    if (mix.dried) bear('state.dried', mix.id);
    for (const flag of doseFlags(book, mix)) {
      flags.push(flag);
      bear('dose.above-usual', flag.subject);
      if (flag.kind === 'dose-above-highest') bear('dose.above-highest', flag.subject);
    }
  }
  const surfaces = withBrought(book, bench);
  for (const id of surfaces) meet('surface', id);
  for (const id of bench.equipment) {
    const other = book.others.get(id);
    if (other === undefined) meet('equipment', id);
    else present('other', id, other.marks);
  }

  for (const id of bench.agentsAtHand ?? []) {
    const other = book.others.get(id);
    if (other !== undefined) present('other', id, other.marks);
    else if (!book.agentIndex.has(id))
      unknown.push({ kind: 'agent', id, sdsSection: settledBy.agent });
  }
  for (const use of bench.uses) {
    bear('state.used', `agent.${use.agent}`);
    const agent = book.agents[book.agentIndex.get(use.agent) ?? -1];
    const other = book.others.get(use.agent);
    if (agent !== undefined) present('agent', agent.id, agent.marks);
    else if (other !== undefined) present('other', other.id, other.marks);
    else notKnown('agent', use.agent);
  }

  if (bench.people.under16) bear('person.under16', 'person.under16');
  for (const flag of bench.people.flags) {
    if (book.people.has(flag)) bear(`person.${flag}`, `person.${flag}`);
    else notKnown('person', flag);
  }
  if ((bench.people.count ?? 1) > 1) bear('people.several', 'people.several');
  if ((bench.people.count ?? 1) >= GROUP) bear('people.group', 'people.group');
  const air = bench.room?.air;
  if (air !== undefined && book.heightOf('air', air) < 0) {
    unknown.push({ kind: 'air', id: air, sdsSection: settledBy.air });
  }
  return { tags: new Set(bearers.keys()), bearers, unknown, flags, surfaces };
};

const tableOf = (
  book: Book,
  kind: 'ink' | 'additive' | 'equipment',
): ReadonlyMap<string, { readonly marks: readonly string[] }> =>
  kind === 'ink' ? book.inks : kind === 'additive' ? book.additives : book.equipment;

const withBrought = (book: Book, bench: Bench): readonly string[] => {
  const named = new Set(bench.surfaces);
  for (const mix of bench.mixes) for (const id of mix.on ?? []) named.add(id);
  for (const id of [...named]) {
    for (const brought of book.surfaces.get(id)?.surface.brings ?? []) named.add(brought);
  }
  return [...named].sort((a, b) => (a < b ? -1 : 1));
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
