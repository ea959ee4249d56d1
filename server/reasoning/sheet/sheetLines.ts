import {
  PHASES,
  type Because,
  type Flag,
  type Region,
  type Rule,
  type Route,
  type Scale,
  type ScaleId,
  type Sheet,
  type SheetLine,
  type Unknown,
} from '../types.js';
import type { Book } from '../book/book.js';
import { sure } from '../book/sure.js';
import { isIgnitableWaste } from '../rags/waste.js';
import { airLines } from './airLines.js';
import { PER_THING, SPOKEN } from './lineTexts.js';
import type { Spoken, Values } from './spoken.js';

/** All of a sheet that lines are made from. */
export type Findings = Omit<Sheet, 'lines'> & {
  readonly rules: readonly Rule[];
  /** Place on the air scale that the room has; undefined when it was not said. */
  readonly airHave: number | undefined;
  /** Whether the gloves level leaves the choice to the data sheet. */
  readonly glovesBySheet: boolean;
  /** Where no one glove holds for all agents: what holds for each. */
  readonly gloveFor: readonly { readonly agent: string; readonly material: string }[];
  /** Agents said to be in use, with the surfaces on the bench that they harm. */
  readonly harmedByUse: readonly { readonly agent: string; readonly surfaces: readonly string[] }[];
  /** Surfaces that no mix is said to be on. */
  readonly uncovered: readonly string[];
  /** Things on the bench that bear one of the tags (`ink.oil-relief`). */
  readonly itemsOf: (tags: readonly string[]) => readonly string[];
  readonly region: Region;
  readonly solventRags: boolean;
  readonly solventAgents: readonly string[];
  /** Lowest flash point among agents in use, degrees Celsius. */
  readonly lowestFlashC: number | undefined;
};

/** The lines of a sheet, each with its reasons, by phase and rank. */
export const sheetLines = (book: Book, found: Findings): readonly SheetLine[] => {
  const base = sure(found.rules[0]).id;
  const spoken = [
    ...frameLines(found, base),
    ...unknownLines(found, base),
    ...levelLines(book, found),
    ...airLines(book, found.air),
    ...gloveLines(found, base),
    ...ruleLines(book, found),
    ...harmLines(found),
    ...agentLines(found),
    ...toolLines(found),
    ...ragLines(book, found, base),
    ...aidLines(book, found),
  ];
  return inOrder(book, spoken);
};

const frameLines = (found: Findings, base: string): readonly Spoken[] => {
  const { bench } = found;
  const because = [base, `region.${found.region.id}`];
  return [
    { text: SPOKEN.defer, because },
    ...(bench.mixes.length === 0 ? [{ text: SPOKEN.noMixes, because: [base] }] : []),
    ...(bench.surfaces.length === 0 && bench.mixes.every((mix) => mix.on === undefined)
      ? [{ text: SPOKEN.noSurfaces, because: [base] }]
      : []),
    ...(found.uncovered.length === 0
      ? []
      : [{ text: SPOKEN.notCovered, values: { surfaces: found.uncovered }, because: [base] }]),
    ...(needsNoAgent(found.plan) ? [{ text: SPOKEN.noAgent, because: [base] }] : []),
    ...found.flags.flatMap((flag): readonly Spoken[] => {
      if (flag.kind === 'bottle-used') {
        return [bottleLine(SPOKEN.bottleUsed, flag)];
      }
      return flag.kind === 'bottle-milder' ? [bottleLine(SPOKEN.bottleMilder, flag)] : [];
    }),
  ];
};

const bottleLine = (text: string, { subject, values }: Flag): Spoken => ({
  text,
  values,
  about: subject,
  because: [subject],
});

/** Nothing on the bench is washed: it is scraped, spent as a rag, or kept clean. */
const needsNoAgent = ({ routes }: Sheet['plan']): boolean =>
  routes.length > 0 &&
  routes.every(({ stuck, passes }) => stuck === undefined && !passes.some((pass) => pass.agent));

const unknownLines = (found: Findings, base: string): readonly Spoken[] =>
  found.unknown.map((each) => {
    const rules = found.rules.filter((rule) => rule.when.includes(`unknown.${each.kind}`));
    return {
      text: HAS_DATA_SHEET.includes(each.kind) ? SPOKEN.unknown : SPOKEN.unknownOther,
      values: { what: each.id, section: each.sdsSection },
      about: each.id,
      because: rules.length === 0 ? [base] : rules.map((rule) => rule.id),
    };
  });

/** What a data sheet settles; nobody writes one for a tool, a machine or a person. */
const HAS_DATA_SHEET: readonly Unknown['kind'][] = ['ink', 'additive', 'agent'];

const levelLines = (book: Book, found: Findings): readonly Spoken[] => {
  const lines = found.levels.map((reached): Spoken => {
    const text = levelOf(book, reached.scale, reached.height).line;
    const { because, folded } = reached;
    if (reached.scale === 'gloves') return gloveLine(found, text, because, folded);
    return { text, because, folded };
  });
  const need = sure(found.levels.find((reached) => reached.scale === 'air'));
  const have = found.airHave;
  if (have === undefined || have >= need.height) return lines;
  return [
    ...lines,
    {
      text: SPOKEN.airShort,
      values: { have: levelOf(book, 'air', have).id, level: need.level },
      because: need.because,
    },
  ];
};

const levelOf = (book: Book, scale: ScaleId, height: number): Scale['levels'][number] =>
  sure(sure(book.catalogue.scales.find((each) => each.id === scale)).levels[height]);

const gloveLine = (found: Findings, text: string, because: Because, folded: Because): Spoken => {
  const [first] = found.gloves.materials;
  const reasons = [...new Set([...because, ...found.gloves.because])];
  const noneHolds = first === undefined && !found.glovesBySheet;
  return {
    text: noneHolds ? SPOKEN.noGloveHolds : text,
    values: { materials: first === undefined ? [] : [first.id] },
    because: reasons,
    folded,
  };
};

const gloveLines = (found: Findings, base: string): readonly Spoken[] => [
  ...found.gloveFor.map(({ agent, material }) => ({
    text: SPOKEN.gloveForAgent,
    values: { agent, materials: [material] },
    about: agent,
    because: [`agent.${agent}`],
  })),
  gloveChangeLine(found, base),
];

const gloveChangeLine = (found: Findings, base: string): Spoken => {
  const { changeAfterMin } = found.gloves;
  const because = found.gloves.because.length === 0 ? [base] : found.gloves.because;
  if (changeAfterMin === undefined) return { text: SPOKEN.glovesChangeTorn, because };
  return changeAfterMin === 0
    ? { text: SPOKEN.glovesChangeNow, because }
    : { text: SPOKEN.glovesChangeAfter, values: { minutes: changeAfterMin }, because };
};

const ruleLines = (book: Book, found: Findings): readonly Spoken[] => {
  const things = thingsOf(found);
  const itemsFor = (text: string): Values => {
    if (!book.namesItems.has(text)) return {};
    const rules = found.rules.filter((rule) => rule.lines.includes(text));
    return { items: found.itemsOf(rules.flatMap((rule) => [...rule.when, ...rule.anyOf])) };
  };
  return found.rules.flatMap((rule) =>
    rule.lines.flatMap((text): readonly Spoken[] => {
      const each = things.get(text);
      return each === undefined
        ? [{ text, values: itemsFor(text), because: [rule.id] }]
        : each.map(({ about, values }) => ({ text, values, about, because: [rule.id] }));
    }),
  );
};

/** What a line is printed for, and its figures. */
interface Printed {
  readonly about: string;
  readonly values: Values;
}

/** Figures of the lines that are printed once a thing. */
const thingsOf = (found: Findings): ReadonlyMap<string, readonly Printed[]> => {
  const flagged = (kind: string): readonly Printed[] =>
    found.flags
      .filter((flag) => flag.kind === kind)
      .map(({ subject, values }) => ({ about: subject, values }));
  const unknown = (kind: string): readonly Printed[] =>
    found.unknown
      .filter((each) => each.kind === kind)
      .map(({ id }) => ({ about: id, values: { what: id } }));
  return new Map([
    [PER_THING.doseAboveUsual, flagged('dose-above-usual')],
    [PER_THING.doseAboveHighest, flagged('dose-above-highest')],
    [PER_THING.unknownEquipment, unknown('equipment')],
    [PER_THING.unknownPerson, unknown('person')],
  ]);
};

/** How each agent is put on, once, so that the tools' lines need only name it. */
const agentLines = (found: Findings): readonly Spoken[] => {
  const dried = found.bench.mixes.some((mix) => mix.dried) ? ['dried'] : [];
  return found.amounts.ml.map(({ agent, range }) => ({
    text: SPOKEN.agentHow,
    values: { what: agent, agent, ml: range, dried },
    about: agent,
    because: [`agent.${agent}`],
  }));
};

const harmLines = (found: Findings): readonly Spoken[] =>
  found.harmedByUse.map(({ agent, surfaces }) => ({
    text: SPOKEN.useHarms,
    values: { agent, surfaces },
    about: agent,
    because: surfaces.map((surface) => `pair.${surface}.${agent}`),
  }));

const toolLines = (found: Findings): readonly Spoken[] => {
  const grouped = new Map<string, { readonly route: Route; readonly mixes: string[] }>();
  for (const route of found.plan.routes) {
    const { surface, passes, stuck } = route;
    const key = JSON.stringify([surface, passes, stuck, route.wouldDo]);
    const seen = grouped.get(key);
    if (seen === undefined) grouped.set(key, { route, mixes: [route.mix] });
    else seen.mixes.push(route.mix);
  }
  const groups = [...grouped.values()];
  return groups.map(({ route, mixes }): Spoken => {
    const isShared = groups.some(
      (each) => each.route.surface === route.surface && each.route !== route,
    );
    return toolLine(found, route, mixes, isShared);
  });
};

/** One tool's line; where its mixes go different ways, it says for which inks. */
const toolLine = (
  found: Findings,
  route: Route,
  mixes: readonly string[],
  isShared: boolean,
): Spoken => {
  const because = found.plan.routes
    .filter((each) => each.surface === route.surface && mixes.includes(each.mix))
    .flatMap((each) => each.because);
  const inks = found.bench.mixes
    .filter((mix) => mixes.includes(mix.id))
    .flatMap((mix) => mix.parts.map((part) => part.ink));
  const text = isShared ? SPOKEN.toolFor : SPOKEN.tool;
  return {
    text: route.stuck === undefined ? text : SPOKEN.stuck[route.stuck],
    values: {
      surface: route.surface,
      mixes,
      inks: [...new Set(inks)],
      ...(route.wouldDo === undefined ? {} : { agents: route.wouldDo }),
    },
    because: [...new Set(because)],
    route,
    about: [route.surface, ...mixes].join('.'),
  };
};

const ragLines = (book: Book, found: Findings, base: string): readonly Spoken[] => {
  const { region, amounts } = found;
  const streams = found.streams.map((stream) => ({
    text: sure(book.streams.get(stream.id)).line,
    values: { items: stream.items, stream: stream.id },
    because: [...stream.because, `stream.${stream.id}`],
  }));
  const codes = [...new Set(found.streams.flatMap((stream) => codesFor(found, stream.id)))];
  const because = [`region.${region.id}`];
  const spiritCodes = codesFor(found, 'used-solvent');
  const reasons = found.solventAgents.map((agent) => `agent.${agent}`);
  return [
    ...(amounts.rags.high === 0
      ? []
      : [{ text: SPOKEN.ragsReady, values: { rags: amounts.rags }, because: [base] }]),
    ...streams,
    codes.length === 0
      ? { text: SPOKEN.wasteAsk, because }
      : { text: SPOKEN.wasteCodes, values: { codes }, because },
    ...(found.solventRags && region.wipes !== undefined
      ? [
          {
            text: SPOKEN.wipesRule,
            values: { label: region.wipes.label, days: region.wipes.days },
            because,
          },
        ]
      : []),
    ...(found.solventAgents.length === 0
      ? []
      : [
          {
            text: spiritCodes.length === 0 ? SPOKEN.usedSpiritNoCode : SPOKEN.usedSpirit,
            values: { codes: spiritCodes },
            because: [...because, ...reasons],
          },
        ]),
  ];
};

/** Codes that a waste may have here: an ignitable one only for what lights easily. */
const codesFor = (found: Findings, waste: string): readonly string[] => {
  const { region, lowestFlashC } = found;
  const isIgnitable = isIgnitableWaste(region, {
    flashPointC: lowestFlashC,
    selfHeating: found.streams.some((stream) => stream.id === waste && stream.selfHeating),
  });
  return region.wasteCodes
    .filter(
      (code) =>
        code.isProse !== true &&
        code.for.includes(waste) &&
        (code.onlyIgnitable !== true || isIgnitable) &&
        (code.onlyAgents?.some((agent) => found.solventAgents.includes(agent)) ?? true),
    )
    .map((code) => code.code);
};

const aidLines = (book: Book, found: Findings): readonly Spoken[] => {
  const region = `region.${found.region.id}`;
  return [
    { text: SPOKEN.call, because: [region] },
    ...Object.entries(SPOKEN.doors).map(([door, text]) => ({
      text,
      because: [
        ...book.catalogue.firstAid
          .filter((row) => row.door === door)
          .map((row) => `first-aid.${row.id}`),
        region,
      ],
    })),
  ];
};

/** One line a text and figures, reasons joined; sorted by phase, rank and id. */
const inOrder = (book: Book, spoken: readonly Spoken[]): readonly SheetLine[] => {
  const joined = new Map<string, SheetLine>();
  for (const each of spoken) {
    const text = sure(book.lines.get(each.text));
    const id = each.about === undefined ? text.id : `${text.id}.${each.about}`;
    const seen = joined.get(id);
    const folded = each.folded ?? [];
    joined.set(id, {
      id,
      text: text.id,
      phase: text.phase,
      rank: text.rank,
      values: each.values ?? {},
      because: seen === undefined ? once(each.because) : once([...seen.because, ...each.because]),
      folded: seen === undefined ? folded : once([...seen.folded, ...folded]),
      ...(each.route === undefined ? {} : { route: each.route }),
    });
  }
  const lines = [...joined.values()].sort((a, b) => a.rank - b.rank);
  // By rank within the phase; tools keep their working order by being met in it.
  return PHASES.flatMap((phase) => lines.filter((line) => line.phase === phase));
};

const once = (because: Because): Because => (because.length < 2 ? because : [...new Set(because)]);
