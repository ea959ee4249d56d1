import { describe, expect, it } from 'vitest';
import { longDate } from '../../../server/words/index.js';
import { helpNowView } from '../../../server/web/presenters/helpNowView.js';
import { catalogue, words } from '../../support/rules.js';
import { renderPage } from '../../support/views.js';

const view = (region: string) => helpNowView(region, { catalogue, words, fallback: 'other' });

describe('help now', () => {
  it('has six doors with steps behind each, and no row of first aid without a door', () => {
    const { doors } = view('uk');
    expect(doors).toHaveLength(6);
    for (const door of doors) {
      expect(door.cases.length).toBeGreaterThan(0);
      for (const one of door.cases) expect(one.steps.length).toBeGreaterThan(0);
    }
    const cases = doors.flatMap((door) => door.cases);
    expect(cases).toHaveLength(catalogue.firstAid.length);
  });

  it.each(catalogue.regions.map((row) => row.id))('shows the numbers of %s', (id) => {
    const region = catalogue.regions.find((row) => row.id === id);
    const { numbers, regions } = view(id);
    expect(numbers.emergency.map((one) => one.number)).toEqual(
      region?.emergency.map((one) => one.number),
    );
    expect(numbers.checkedOn).toBe(longDate(region?.checkedOn ?? ''));
    expect(regions.filter((one) => one.isHere).map((one) => one.name)).toEqual([region?.name]);
    const html = renderPage('helpNow', view(id));
    expect(html).not.toMatch(/\{\w+\}|href="tel:"/);
  });

  it('asks to ring neither the police nor a line for text, and no line of another state', () => {
    const first = (region: string) => view(region).numbers.ringFirst.map((one) => one.number);
    expect(first('de')).toEqual(['112']);
    expect(first('fr')).toEqual(['112']);
    expect(first('au')).toEqual(['000']);
    expect(first('uk')).toEqual(['999', '112']);
    for (const { id } of catalogue.regions) expect(first(id), id).not.toEqual([]);
    const { poisonFirst, poisonElse } = view('de').numbers;
    expect(poisonFirst).toEqual([]);
    expect(poisonElse).toContain('your state');
    expect(view('us').numbers.poisonElse).toBe('');
  });

  it('rings a number by its digits alone, and only where there are digits', () => {
    const [poison] = view('us').numbers.poison;
    expect(poison?.href).toBe('tel:18002221222');
    for (const { numbers } of catalogue.regions.map((row) => view(row.id))) {
      for (const one of [...numbers.emergency, ...numbers.poison]) {
        expect(one.href).toMatch(/\d/.test(one.number) ? /^tel:\+?\d+$/ : /^$/);
      }
    }
  });

  it('falls back to the row for everywhere else when nobody says where', () => {
    for (const region of ['', 'atlantis']) {
      expect(view(region).numbers.region).toBe(words.name('region', 'other'));
    }
    expect(() => helpNowView('', { catalogue, words, fallback: 'atlantis' })).toThrow('atlantis');
  });
});
