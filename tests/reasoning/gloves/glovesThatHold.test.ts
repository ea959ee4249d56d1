import { describe, expect, it } from 'vitest';
import type { Agent, Breakthrough, GloveRules } from '../../../server/reasoning/index.js';
import {
  agentGloveGrade,
  bestGloves,
  chartGrade,
  glovesThatHold,
  wearMinutes,
} from '../../../server/reasoning/gloves/glovesThatHold.js';
import { catalogue } from '../../support/rules.js';

const { gloves } = catalogue;

const agentOf = (id: string): Agent => {
  const agent = catalogue.agents.find((row) => row.id === id);
  if (agent === undefined) throw new Error(`no agent ${id}`);
  return agent;
};

const withGlove = (glove: Partial<Agent['glove']>): Agent => ({
  ...agentOf('acetone'),
  glove: { chartRows: [], chemicals: [], words: '', ...glove },
});

const timed = (rows: readonly Partial<Breakthrough>[]): GloveRules => ({
  ...gloves,
  breakthrough: rows.map((row, index) => ({
    id: `row-${String(index)}`,
    how: 'read',
    sources: [],
    chemical: 'some spirit',
    material: 'nitrile',
    thickness: 'thin',
    minutesLow: 60,
    testedWarm: true,
    ...row,
  })),
});

const spirit = withGlove({ chemicals: ['some spirit'] });

const named = (ids: readonly string[], thickness: 'thin' | 'thick') =>
  glovesThatHold(gloves, ids.map(agentOf), thickness).map((glove) => glove.id);

describe('the glove chart', () => {
  it('is read by the id of a row and by the name of its chemical', () => {
    expect(chartGrade(gloves, 'acetone', 'nitrile')).toBe('P');
    expect(chartGrade(gloves, 'Acetone', 'butyl')).toBe('VG');
  });

  it('says nothing of a chemical or a material that is not in it', () => {
    expect(chartGrade(gloves, 'dragon blood', 'nitrile')).toBeUndefined();
    expect(chartGrade(gloves, 'acetone', 'oilskin')).toBeUndefined();
  });

  it('gives a mixture the worst letter of its parts, and names the best materials for it', () => {
    expect(bestGloves(gloves, ['linseed-oil'], ['latex'])).toEqual({
      rating: 'VG',
      materials: ['nitrile', 'neoprene'],
    });
    expect(bestGloves(gloves, ['acetone', 'linseed-oil'], ['latex'])).toEqual({
      rating: 'G',
      materials: ['neoprene'],
    });
  });

  it('takes a chemical that is not in it for poor in all, as it does with no material left', () => {
    expect(bestGloves(gloves, ['dragon blood'], ['latex']).rating).toBe('P');
    const all = gloves.materials.map((material) => material.id);
    expect(bestGloves(gloves, ['acetone'], all)).toEqual({ rating: 'P', materials: [] });
  });
});

describe('grade of a glove against an agent', () => {
  it('is the worst of its chart rows', () => {
    const agent = withGlove({ chartRows: ['acetone', 'linseed-oil'] });
    expect(agentGloveGrade(gloves, agent, 'nitrile')).toBe('P');
    expect(agentGloveGrade(gloves, agent, 'neoprene')).toBe('G');
  });

  it('is the stand-in where the chart has no row, and poor where nothing is said', () => {
    const agent = withGlove({ standIn: { butyl: 'G' } });
    expect(agentGloveGrade(gloves, agent, 'butyl')).toBe('G');
    expect(agentGloveGrade(gloves, agent, 'nitrile')).toBe('P');
    expect(agentGloveGrade(gloves, withGlove({}), 'nitrile')).toBe('P');
    expect(agentGloveGrade(gloves, withGlove({ chartRows: ['gone'] }), 'nitrile')).toBe('P');
  });
});

describe('minutes that a glove may be worn', () => {
  it('are two thirds of a time tested warm, a third of one tested cool', () => {
    expect(wearMinutes(timed([{}]), spirit, 'nitrile', 'thin')).toBe(40);
    expect(
      wearMinutes(timed([{ testedWarm: false, minutesLow: 120 }]), spirit, 'nitrile', 'thin'),
    ).toBe(40);
  });

  it('are never more than the longest that any glove is named for', () => {
    const { mostMinutes } = gloves;
    expect(wearMinutes(timed([{ minutesLow: 10_000 }]), spirit, 'nitrile', 'thin')).toBe(
      mostMinutes,
    );
  });

  it('are those of the shortest time that speaks for the thickness', () => {
    const rules = timed([
      { minutesLow: 90 },
      { minutesLow: 30 },
      { minutesLow: 3, thickness: 'thick' },
      { minutesLow: 60, thickness: 'unknown' },
      { minutesLow: 1, material: 'butyl' },
      { minutesLow: 1, chemical: 'another' },
    ]);
    expect(wearMinutes(rules, spirit, 'nitrile', 'thin')).toBe(20);
    expect(wearMinutes(rules, spirit, 'nitrile', 'thick')).toBe(2);
  });

  it('are taken from the other thickness where this one has none', () => {
    expect(wearMinutes(timed([{ minutesLow: 30 }]), spirit, 'nitrile', 'thick')).toBe(20);
  });

  it('are none at all where nothing is published, and nothing to time for soap', () => {
    expect(wearMinutes(timed([]), spirit, 'nitrile', 'thin')).toBe(0);
    expect(wearMinutes(gloves, agentOf('soap-water'), 'nitrile', 'thin')).toBeUndefined();
  });
});

describe('gloves that hold', () => {
  it('are all that may be named, and never latex, when no agent is used', () => {
    expect(glovesThatHold(gloves, [], 'thin')).toEqual([
      { id: 'nitrile', grade: 'VG' },
      { id: 'butyl', grade: 'VG' },
      { id: 'neoprene', grade: 'VG' },
    ]);
  });

  it('are butyl for acetone, and nitrile for white spirit', () => {
    expect(named(['acetone'], 'thick')[0]).toBe('butyl');
    expect(named(['white-spirit'], 'thick')).toContain('nitrile');
    expect(named(['white-spirit'], 'thick')).not.toContain('butyl');
  });

  it('are none where no one glove is good against both', () => {
    expect(named(['acetone', 'veg-ester'], 'thick')).toEqual([]);
  });

  it('stand in order of wear, then of grade', () => {
    const order = glovesThatHold(gloves, [agentOf('ethanol')], 'thick');
    const minutes = order.map((glove) => glove.changeAfterMin ?? Infinity);
    expect(minutes).toEqual([...minutes].sort((a, b) => b - a));
    const agent = withGlove({ standIn: { nitrile: 'G', butyl: 'VG', neoprene: 'VG' } });
    expect(glovesThatHold(gloves, [agent], 'thin').map((glove) => glove.id)).toEqual([
      'butyl',
      'neoprene',
      'nitrile',
    ]);
  });

  it('keep the shortest of the minutes against all agents', () => {
    const [nitrile] = glovesThatHold(
      gloves,
      [agentOf('white-spirit'), agentOf('kerosene')],
      'thick',
    );
    const each = ['white-spirit', 'kerosene'].map((id) =>
      wearMinutes(gloves, agentOf(id), nitrile?.id ?? '', 'thick'),
    );
    expect(nitrile?.changeAfterMin).toBe(Math.min(...each.map((minutes) => minutes ?? Infinity)));
  });
});
