import { describe, expect, it } from 'vitest';
import type { Bench } from '../../../server/reasoning/index.js';
import { onBench } from '../../../server/web/presenters/onBench.js';
import { aSheet } from '../../support/aSheet.js';
import { words } from '../../support/rules.js';

const on = (changes: Partial<Bench>) => onBench({ ...aSheet.bench, ...changes }, words);

describe('what the sheet is for', () => {
  it('names surfaces and equipment, and says nothing of what was not said', () => {
    expect(on({})).toEqual({
      surfaces: ['glass-slab', 'roller-leather-nap']
        .map((id) => words.short('surface', id))
        .join(', '),
      equipment: words.short('equipment', 'etching-press'),
      room: '',
      air: '',
      count: '',
      people: '',
      isDried: false,
    });
  });

  it('gives the room as a volume or by its sides, and the air in words or figures', () => {
    expect(on({ room: { volumeM3: 60, air: 'window' } })).toMatchObject({
      room: '60 m³',
      air: words.level('air', 'window'),
    });
    expect(on({ room: { lengthM: 5, widthM: 4, heightM: 2.5, fanM3PerHour: 200 } })).toMatchObject({
      room: '5 × 4 × 2.5 m',
      air: '200 m³/h',
    });
    expect(on({ room: { airChangesPerHour: 4 } })).toMatchObject({ room: '', air: '4/h' });
  });

  it('counts people and names what matters of them, each once', () => {
    expect(
      on({ people: { count: 12, under16: true, flags: ['asthma', 'under16'] } }),
    ).toMatchObject({
      count: '12',
      people: ['under16', 'asthma'].map((id) => words.name('person', id)).join(', '),
    });
  });
});
