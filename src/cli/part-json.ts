import type { Quantity } from '../quantity/quantity.ts';
import { quantityJson } from './figures-json.ts';

const isQuantity = (value: object): value is Quantity =>
  'amount' in value && 'unit' in value && 'origin' in value;

const snake = (name: string): string => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

/**
 * A part of a worked job as commands print it: every quantity as text, amount, unit, rules and working; names in the way of the job
 * file; functions, which only draw, left out.
 */
export function partJson(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(partJson);
  if (value === null || typeof value !== 'object') return value;
  if (isQuantity(value)) return quantityJson(value);
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, each]) => typeof each !== 'function')
      .map(([name, each]) => [snake(name), partJson(each)]),
  );
}
