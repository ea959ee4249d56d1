import { accepted, type Checking, type Known } from './known.js';

/** Tags that name no row. */
const FIXED = {
  unknown: ['ink', 'additive', 'surface', 'agent', 'equipment', 'person'],
  state: ['dried', 'stuck', 'no-agent', 'used'],
  dose: ['above-usual', 'above-highest'],
  people: ['several', 'group'],
};

/** Every tag that a rule or a never-together pair asks for is one that a bench can bring. */
export function checkTags({ tables, say }: Checking): void {
  const kinds = tagKinds(tables);
  const asked = [
    ...tables.rules.rows.map((at) => ({ at, when: at.row.when, anyOf: at.row.anyOf })),
    ...tables.neverTogether.rows.map((at) => ({ at, one: at.row.one, other: at.row.other })),
  ];
  for (const { at, ...columns } of asked) {
    for (const [column, tags] of Object.entries(columns)) {
      tags.forEach((tag, place) => {
        const accepts = wanted(tag, kinds);
        if (accepts !== undefined) say(at.file, [...at.path, column, place], tag, accepts);
      });
    }
  }
}

/** What would be accepted instead of a tag; `undefined` when the tag will do. */
function wanted(tag: string, kinds: ReadonlyMap<string, Known>): string | undefined {
  if (tag === 'always') return undefined;
  const dot = tag.indexOf('.');
  const kind = kinds.get(tag.slice(0, Math.max(dot, 0)));
  if (kind === undefined)
    return `always, or a tag that begins with ${[...kinds.keys()].join('., ')}.`;
  return kind.ids === undefined || kind.ids.has(tag.slice(dot + 1)) ? undefined : accepted(kind);
}

function tagKinds(tables: Checking['tables']): ReadonlyMap<string, Known> {
  const kind = (name: string, table: { readonly ids: ReadonlySet<string> | undefined }) =>
    [name, { what: `${name}. and an id`, ids: table.ids }] as const;
  const bands = tables.bands.rows.map(({ row }) => String(row.band));
  return new Map<string, Known>([
    kind('ink', tables.inks),
    kind('additive', tables.additives),
    kind('surface', tables.surfaces),
    kind('agent', tables.agents),
    kind('equipment', tables.equipment),
    kind('person', tables.people),
    kind('other', tables.others),
    kind('mark', tables.marks),
    kind('stream', tables.streams),
    kind('band', { ids: tables.bands.ids && new Set(bands) }),
    ...Object.entries(FIXED).map(([name, ids]) => kind(name, { ids: new Set(ids) })),
  ]);
}
