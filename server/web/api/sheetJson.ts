import type { Route, Sheet } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { airJson } from './airJson.js';
import type { SheetAnswer } from './sheetAnswer.js';

/** A sheet as JSON: ids for programs, and the same words as on the page for people. */
export function sheetJson(sheet: Sheet, words: Words): SheetAnswer {
  const { bench, plan, gloves } = sheet;
  const level = Object.fromEntries(sheet.levels.map((one) => [one.scale, one.level]));
  const lines = sheet.lines.map((line) => {
    const { head, rest } = words.line(line, bench.region);
    const { id, phase, because, folded } = line;
    return { id, phase, head, rest, words: `${head} ${rest}`.trim(), because, folded };
  });
  const answer = {
    bench: { ...bench },
    levels: level as SheetAnswer['levels'],
    levelReasons: Object.fromEntries(
      sheet.levels.map(({ scale, because, folded }) => [scale, { because, folded }]),
    ),
    agents: plan.agents,
    plan: { hazard: plan.hazard, chosenFrom: plan.chosenFrom },
    routes: plan.routes.map((route) => routeJson(route, sheet, words)),
    gloves: {
      materials: gloves.materials.map((one) => one.id),
      grades: Object.fromEntries(gloves.materials.map((one) => [one.id, one.grade])),
      minutes: Object.fromEntries(
        gloves.materials.flatMap(({ id, changeAfterMin }) =>
          changeAfterMin === undefined ? [] : [[id, changeAfterMin] as const],
        ),
      ),
      thickness: gloves.thickness,
      ...(gloves.changeAfterMin !== undefined && { changeAfterMin: gloves.changeAfterMin }),
      because: gloves.because,
    },
    rags: {
      level: level['rags'] ?? '',
      streams: sheet.streams.map(({ id, level: route, ...stream }) => ({
        route,
        stream: id,
        ...stream,
        ...words.stream(id),
      })),
    },
    neverTogether: sheet.neverTogether.map((one) => ({ ...one, words: words.never(one.id) })),
    unknown: sheet.unknown.map((one) => ({ ...one, words: words.unknown(one) })),
    flags: sheet.flags.map((flag) => ({ ...flag, words: words.flag(flag) })),
    swaps: sheet.swaps.map((swap) => ({ ...swap, words: words.swap(swap) })),
    amounts: sheet.amounts,
    ...(sheet.air && { air: airJson(sheet.air, words) }),
    lines,
    firstAid: words.firstAid(bench.region),
    emergency: words.emergency(bench.region),
    defer: words.defer(bench.region),
  };
  return { ...answer, ...reasonsJson(sheet, words) };
}

function routeJson(route: Route, sheet: Sheet, words: Words): SheetAnswer['routes'][number] {
  const { surface, mix, band, because } = route;
  if (route.stuck !== undefined) {
    const { stuck: reason, wouldDo = [] } = route;
    return {
      surface,
      mix,
      stuck: true,
      reason,
      wouldDo,
      words: stuckWords(route, sheet, words),
      because,
    };
  }
  return {
    surface,
    mix,
    band,
    passes: route.passes.map((pass) => ({ ...pass, words: words.pass(pass, surface) })),
    words: words.passes(route),
    because,
  };
}

/** What the sheet's own line says of a tool that is stuck: one wording for one fact. */
function stuckWords({ surface, mix }: Route, { lines, bench }: Sheet, words: Words): string {
  const line = lines.find(({ route, values }) => {
    const { mixes } = values;
    return route?.surface === surface && Array.isArray(mixes) && mixes.includes(mix);
  });
  if (!line) return '';
  const { head, rest } = words.line(line, bench.region);
  return `${head} ${rest}`.trim();
}

/** Every row that is named as a reason, once, and every source of those rows, once. */
function reasonsJson(sheet: Sheet, words: Words): Pick<SheetAnswer, 'rules' | 'sources'> {
  const reasons = [
    ...sheet.levels.flatMap((one) => [...one.because, ...one.folded]),
    ...sheet.lines.flatMap((one) => [...one.because, ...one.folded]),
    ...sheet.plan.routes.flatMap((one) => one.because),
    ...sheet.streams.flatMap((one) => one.because),
    ...sheet.neverTogether.flatMap((one) => one.because),
    ...sheet.gloves.because,
  ];
  const rows = [...new Set(reasons)].sort().flatMap((id) => words.row(id) ?? []);
  const sources = rows.flatMap((row) => row.sources.map((source) => [source.id, source] as const));
  return {
    rules: Object.fromEntries(
      rows.map((row) => [row.id, { ...row, sources: row.sources.map((source) => source.id) }]),
    ),
    sources: Object.fromEntries(sources),
  };
}
