import { expect, test } from 'vitest';
import { airPerPerson, changesByFloor, changesByFlow } from '../../../server/reasoning/index.js';

test('the same air changes a small room more often', () => {
  expect(changesByFlow(120, 30)).toBe(4);
  expect(changesByFlow(120, 60)).toBe(2);
  expect(changesByFloor(3.5, 6)).toBeCloseTo(2.1, 9);
});

test('a room with no size, no height or nobody in it has no answer', () => {
  expect(changesByFlow(120, 0)).toBeUndefined();
  expect(changesByFloor(3.5, 0)).toBeUndefined();
  expect(airPerPerson({ personRate: 5, floorRate: 0.9, peoplePerFloor: 0 })).toBeUndefined();
});

test('people who stand closer share the air of the floor', () => {
  const air = (peoplePerFloor: number) =>
    airPerPerson({ personRate: 5, floorRate: 0.9, peoplePerFloor }) ?? NaN;
  expect(air(0.4)).toBeLessThan(air(0.2));
});
