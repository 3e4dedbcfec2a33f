import { describe, expect, test } from 'vitest';
import { layOut } from '../../../src/calc/holes/lay-out.ts';
import type { LayoutProblem } from '../../../src/calc/holes/problem.ts';
import { bareRoof } from './roofs.ts';

describe('a roof that can’t be searched is refused, with the field, what was found and what is expected', () => {
  const refused: { change: Partial<LayoutProblem>; says: string }[] = [
    { change: { length: 0 }, says: 'length: found 0, expected more than 0' },
    { change: { length: -12 }, says: 'length: found -12, expected more than 0' },
    { change: { length: Number.NaN }, says: 'length: found NaN, expected a finite number of inches' },
    {
      change: { length: Number.POSITIVE_INFINITY },
      says: 'length: found Infinity, expected a finite number of inches',
    },
    { change: { length: 5 }, says: 'length: found 5, expected at least the hole’s diameter of 6' },
    { change: { grid: 0 }, says: 'grid: found 0, expected more than 0' },
    { change: { grid: -1 }, says: 'grid: found -1, expected more than 0' },
    { change: { grid: 1e-7 }, says: 'grid: found 1e-7, expected at least 0.000001' },
    { change: { grid: 1000 }, says: 'grid: found 1000, expected a step that leaves a mark on the roof' },
    { change: { grid: 1 / 64 }, says: 'length: found 50688 steps of 0.015625, expected at most 40000 steps' },
    { change: { first: { low: 96, high: 72 } }, says: 'first: found 96 to 72, expected the lower end first' },
    { change: { last: { low: -1, high: 72 } }, says: 'last.low: found -1, expected 0 or more' },
    {
      change: { last: { low: 0, high: Number.POSITIVE_INFINITY } },
      says: 'last.high: found Infinity, expected a finite',
    },
    {
      change: { spacing: { low: Number.NaN, high: 1 } },
      says: 'spacing.low: found NaN, expected a finite number',
    },
    {
      change: { spacing: { low: 144, high: 1e7 } },
      says: 'spacing.high: found 10000000, expected at most 1000000',
    },
    { change: { holeDiameter: -6 }, says: 'holeDiameter: found -6, expected more than 0' },
    { change: { holeDiameter: 0 }, says: 'holeDiameter: found 0, expected more than 0' },
    { change: { memberWidth: -1.5 }, says: 'memberWidth: found -1.5, expected 0 or more' },
    { change: { patchSide: 4 }, says: 'patchSide: found 4, expected at least the hole’s diameter of 6' },
    {
      change: { trusses: [0, Number.NaN] },
      says: 'trusses[1]: found NaN, expected a finite number of inches',
    },
    {
      change: { seams: [Number.NEGATIVE_INFINITY] },
      says: 'seams[0]: found -Infinity, expected a finite number',
    },
    {
      change: { seams: Array.from({ length: 3001 }, () => 1) },
      says: 'seams: found 3001 of them, expected at most 3000',
    },
    {
      change: { obstacles: [{ from: 20, to: 10, name: 'vent' }] },
      says: 'obstacles[0]: found 20 to 10, expected the lower end first',
    },
    {
      change: { obstacles: [{ from: Number.NaN, to: 10, name: 'vent' }] },
      says: 'obstacles[0].from: found NaN, expected a finite number of inches',
    },
    {
      change: { length: 2400, grid: 1 / 16, spacing: { low: 10, high: 12 } },
      says: 'spacing.high: found 12, expected at least 126.3',
    },
    {
      change: { length: 2400, grid: 1 / 16, first: { low: 0, high: 2400 } },
      says: 'first and last: found ranges 2424 wide together, expected at most 195.3125',
    },
  ];
  test.each(refused)('$says', ({ change, says }) => {
    const search = () => layOut({ ...bareRoof(66), ...change });
    expect(search).toThrow(RangeError);
    expect(search).toThrow(says);
  });
});

describe('odd roofs that can be searched are', () => {
  test.each([
    { title: 'a roof as long as its hole', change: { length: 6 }, holes: 1 },
    { title: 'a roof that ends between two marks', change: { length: 791.93 }, holes: 5 },
    {
      title: 'trusses and seams off the roof',
      change: { trusses: [-500, 5000], seams: [-500, 5000] },
      holes: 5,
    },
    {
      title: 'an obstacle of no size',
      change: { obstacles: [{ from: 396, to: 396, name: 'nail' }] },
      holes: 5,
    },
    { title: 'a seam listed twice', change: { seams: [80, 80] }, holes: 5 },
    {
      title: 'a spacing shorter than the patch',
      change: { length: 40, spacing: { low: 0, high: 5 } },
      holes: 1,
    },
  ])('$title', ({ change, holes }) => {
    const found = layOut({ ...bareRoof(66), ...change });
    expect(found).toHaveProperty('layout.positions.length', holes);
  });
});
