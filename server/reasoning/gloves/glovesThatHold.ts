import type { Agent, Breakthrough, GloveGrade, GloveRules } from '../types.js';

const GRADES: readonly GloveGrade[] = ['VG', 'G', 'F', 'P'];

const worse = (a: GloveGrade, b: GloveGrade): GloveGrade =>
  GRADES.indexOf(a) >= GRADES.indexOf(b) ? a : b;

/** Grade of one material for one chemical of the published chart; undefined when it has no such row. */
export const chartGrade = (
  gloves: GloveRules,
  chemical: string,
  material: string,
): GloveGrade | undefined =>
  gloves.chart.find((row) => row.chemical === chemical || row.id === chemical)?.grades[material];

/**
 * The best materials for a mixture of chemicals of the chart: a mixture takes the worst letter of
 * its parts, the materials with the best of those are returned.
 */
export const bestGloves = (
  gloves: GloveRules,
  chemicals: readonly string[],
  exclude: readonly string[],
): { readonly rating: GloveGrade; readonly materials: readonly string[] } => {
  const rated = gloves.materials
    .filter((material) => !exclude.includes(material.id))
    .map((material) => ({
      id: material.id,
      grade: chemicals
        .map((chemical) => chartGrade(gloves, chemical, material.id) ?? 'P')
        .reduce(worse, 'VG'),
    }));
  const rating = GRADES.find((grade) => rated.some((each) => each.grade === grade)) ?? 'P';
  return {
    rating,
    materials: rated.filter((each) => each.grade === rating).map((each) => each.id),
  };
};

/** Grade of a material for an agent: worst of its chart rows, or the stand-in; unknown is poor. */
export const agentGloveGrade = (gloves: GloveRules, agent: Agent, material: string): GloveGrade => {
  const { chartRows, standIn } = agent.glove;
  if (chartRows.length === 0) return standIn?.[material] ?? 'P';
  return chartRows.map((row) => chartGrade(gloves, row, material) ?? 'P').reduce(worse, 'VG');
};

/**
 * Minutes that a glove may be worn against an agent, from first contact: the shortest published
 * time for it, times the share that its test allows (a warm, moving hand is harder than the bench
 * test). Thin-glove times stand in where a thick glove has none; 0 (change at once) when none is
 * published; undefined for agents whose time nobody measures (soap, kitchen oil).
 * The change-out rule is ours; see rules/gloves.yaml.
 */
export const wearMinutes = (
  gloves: GloveRules,
  agent: Agent,
  material: string,
  thickness: 'thin' | 'thick',
): number | undefined => {
  if (agent.glove.chemicals.length === 0) return undefined;
  const rows = gloves.breakthrough.filter(
    (row) => row.material === material && agent.glove.chemicals.includes(row.chemical),
  );
  const fitting = rows.filter((row) => row.thickness === thickness || row.thickness === 'unknown');
  const minutes = (fitting.length > 0 ? fitting : rows).map((row) =>
    wholeMinutes(row.minutesLow * share(gloves, row)),
  );
  return minutes.length === 0 ? 0 : Math.min(gloves.mostMinutes, ...minutes);
};

/** Down to the whole minute, after a third of 360 has been allowed to be 120 and not 119.99. */
const wholeMinutes = (minutes: number): number => Math.floor(Math.round(minutes * 10) / 10);

const share = (gloves: GloveRules, row: Breakthrough): number =>
  row.testedWarm ? gloves.share.testedWarm : gloves.share.testedCool;

/** A glove that may be named for all agents at once. */
export interface GloveThatHolds {
  readonly id: string;
  readonly grade: GloveGrade;
  readonly changeAfterMin?: number;
}

/**
 * Gloves that the chart grades good or very good for every agent, longest wear first. With no
 * agents, any whole waterproof glove counts as very good.
 */
export const glovesThatHold = (
  gloves: GloveRules,
  agents: readonly Agent[],
  thickness: 'thin' | 'thick',
): readonly GloveThatHolds[] =>
  gloves.materials
    .filter((material) => material.named)
    .map((material): GloveThatHolds => {
      const grade = agents
        .map((agent) => agentGloveGrade(gloves, agent, material.id))
        .reduce(worse, 'VG');
      const minutes = agents.flatMap(
        (agent) => wearMinutes(gloves, agent, material.id, thickness) ?? [],
      );
      return minutes.length === 0
        ? { id: material.id, grade }
        : { id: material.id, grade, changeAfterMin: Math.min(...minutes) };
    })
    .filter((glove) => glove.grade === 'VG' || glove.grade === 'G')
    .sort(byWear);

const byWear = (a: GloveThatHolds, b: GloveThatHolds): number =>
  minutesOf(b) - minutesOf(a) || GRADES.indexOf(a.grade) - GRADES.indexOf(b.grade);

/** Nothing to time counts as the longest. */
const minutesOf = (glove: GloveThatHolds): number =>
  glove.changeAfterMin ?? Number.MAX_SAFE_INTEGER;
