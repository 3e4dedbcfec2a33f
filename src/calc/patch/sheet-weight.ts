import { inUnit, named, type Quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';

export const sheetMetals = [
  'steel',
  'aluminium',
  'galvanized 26 gauge',
  'galvanized 28 gauge',
  'galvanized 30 gauge',
] as const;
export type SheetMetal = (typeof sheetMetals)[number];

/**
 * How heavy is a square foot of sheet? Steel and aluminium by their thickness; galvanized sheet by its gauge, from the table.
 * By hand: 41.82 lb/ft2 for an inch, × 0.02 in.
 * @throws EntriesClash for steel or aluminium without a thickness, or a gauge with one.
 * @example sheetWeight('steel', quantity(0.02, 'in'), rules).amount.toFixed(4) // => '0.8364'
 */
export function sheetWeight(
  metal: SheetMetal,
  thickness: Quantity<'length'> | undefined,
  rules: Rulebook,
): Quantity<'load'> {
  const clash = (found: string, expected: string) =>
    new EntriesClash({ field: 'thickness', label: 'Thickness of the sheet', found, expected });
  if (metal === 'steel' || metal === 'aluminium') {
    if (!thickness) throw clash(`nothing beside ${metal}`, 'the thickness, such as 0.019 in');
    const heavy = metal === 'steel' ? rules.value('patch.metal.steel') : rules.value('patch.metal.aluminium');
    return named(inUnit(times(heavy, thickness), 'lb/ft2'), 'q', 'Weight of a square foot');
  }
  if (thickness) throw clash('a thickness beside a gauge', 'the gauge alone, or steel with its thickness');
  const weight = rules.find('patch.metal.galvanized', { sheet: metal }, 'weight')?.low;
  if (!weight) throw clash(`${metal}, which the table has not`, 'steel with its thickness');
  return weight;
}
