import { type Quantity, quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { Material } from '../fill/material.ts';
import type { FlueKind } from './flue-kinds.ts';
import { LISTING, type Ring, ringOfFlue, widest } from './flue-rings.ts';
import type { HotThing, HotThingKind } from './hot-things.ts';

/** Is it a light, and no flue? @example isLight('light, not rated for contact') // => true */
export const isLight = (kind: HotThingKind): boolean => kind.startsWith('light');

/**
 * How far does the fill stay from a flue or a light? A listed clearance governs a flue; about a light the largest of those that hold.
 * @example ringOf({ kind: 'light, rated for contact and airtight' }, 'cellulose', rules).from // => 'the label of cellulose'
 */
export function ringOf({ kind, listed }: HotThing, material: Material, rules: Rulebook): Ring {
  return isLight(kind)
    ? ringOfLight(kind, listed, material, rules)
    : ringOfFlue(kind as FlueKind, listed, rules);
}

function ringOfLight(
  kind: HotThingKind,
  listed: Quantity<'length'> | undefined,
  material: Material,
  rules: Rulebook,
): Ring {
  const cellulose: Ring = { ring: rules.value('clearance.light.cellulose'), from: 'the label of cellulose' };
  const rated = kind !== 'light, not rated for contact';
  const asked: Ring[] = rated
    ? [{ ring: quantity(0, 'in'), from: 'nothing; the fill may touch it' }]
    : [{ ring: rules.value('clearance.light.to-insulation'), from: 'the electrical code' }];
  if (listed) asked.push({ ring: listed, from: LISTING });
  if (material === 'cellulose') asked.push(cellulose);
  return asked.reduce(widest);
}
