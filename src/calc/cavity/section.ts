import { format } from '../../quantity/format.ts';
import {
  byMethod,
  compare,
  inches,
  inUnit,
  minus,
  named,
  number,
  over,
  plus,
  type Quantity,
  quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { EntriesClash } from '../declare/calculation.ts';
import type { Values } from '../declare/field.ts';
import { sectionFields } from './fields.ts';
import { areaBelow, bowed, deepest, level, measured, oneSlope, type Profile, twoSlope } from './profile.ts';

export type SectionValues = Values<typeof sectionFields>;

/** The cavity in section, as quantities, with its profile for drawings and for inner loops. */
export interface Section {
  readonly profile: Profile;
  readonly shape: SectionValues['shape'];
  /** The lengths that tell its shape: the width, and the depths. All that is read off the profile rests on them. */
  readonly told: readonly Quantity<'length'>[];
  readonly width: Quantity<'length'>;
  readonly area: Quantity<'area'>;
  readonly meanDepth: Quantity<'length'>;
  readonly deepest: Quantity<'length'>;
  readonly deepestAt: Quantity<'length'>;
  readonly depthAt: (across: Quantity<'length'>) => Quantity<'length'>;
}

const clash = (field: string, label: string, found: string, expected: string): never => {
  throw new EntriesClash({ field, label, found, expected });
};

/** The depth that a shape can't do without. */
function needed(
  q: Quantity<'length'> | undefined,
  field: 'eave' | 'ridge',
  shape: string,
): Quantity<'length'> {
  return q ?? clash(field, `Depth at the ${field}`, 'nothing', `a depth, since the shape is ${shape}`);
}

/** A cavity has no room, and not for its old insulation: told at the field that makes one of its shape deep. */
function tooShallow(shape: SectionValues['shape'], found: string): never {
  const field = shape === 'level' ? 'eave' : shape === 'measured' ? 'points' : 'ridge';
  return clash(field, sectionFields[field].label, found, 'room for new fill');
}

/** A level or a measured cavity asks for no ridge; one that is deeper than it says that the wrong shape was chosen, or the deepest place left out. */
function refuseDeeperRidge({ shape, ridge }: SectionValues, most: Quantity<'length'>): void {
  if ((shape !== 'level' && shape !== 'measured') || !ridge || compare(ridge, most) <= 0) return;
  clash(
    'ridge',
    sectionFields.ridge.label,
    `${format(ridge)} in a ${shape} cavity of ${format(most)}`,
    'no more than that, or nothing',
  );
}

/**
 * How deep is the cavity across the home, and how large is its section?
 * By hand: 14 ft × (3 in + 15 in)/2, which is 14 ft × 0.75 ft.
 * @throws EntriesClash if a depth is missing, all are 0, the eave is deeper than the ridge, a bow is more than a half circle, measured points leave a part of the width out,
 * or a level or measured cavity has a ridge deeper than itself.
 * @example cavitySection({ shape: 'two-slope', width: quantity(14, 'ft'), eave: quantity(3, 'in'), ridge: quantity(15, 'in') }).area.amount.toFixed(6) // => '10.500000'
 */
export function cavitySection(values: SectionValues): Section {
  const { shape, width } = values;
  const area = sectionArea(values);
  const { profile, told } = area;
  const most = deepest(profile);
  if (most.depth === 0) tooShallow(shape, 'no depth anywhere');
  refuseDeeperRidge(values, quantity(most.depth, 'in'));
  return {
    profile,
    shape,
    told,
    width,
    area: named(inUnit(area.quantity, 'ft2'), 'A', 'Area of the cross-section'),
    meanDepth: named(inUnit(over(area.quantity, width), 'in'), 'dm', 'Mean depth'),
    deepest: named(
      byMethod('deepest place of the cross-section', told, most.depth, 'in'),
      'dmax',
      'Depth at the deepest place',
    ),
    deepestAt: named(
      byMethod('where the cross-section is deepest', told, most.across, 'in'),
      'xmax',
      'Deepest place, from the eave',
    ),
    depthAt: (across) =>
      named(
        byMethod(
          `depth of the cross-section at ${format(across, { tape: 8 })}`,
          [across, ...told],
          profile.depthAt(inches(across)),
          'in',
        ),
        'dx',
        'Depth there',
      ),
  };
}

function sectionArea(values: SectionValues): {
  readonly profile: Profile;
  readonly told: Section['told'];
  readonly quantity: Quantity<'area'>;
} {
  const { shape, width } = values;
  if (shape === 'measured') {
    const points = measuredPoints(values);
    const profile = measured(points.map(({ from_eave, depth }) => [inches(from_eave), inches(depth)]));
    const depths = points.flatMap(({ from_eave, depth }) => [from_eave, depth]);
    const quantity = byMethod(
      'trapezoids between the measured depths',
      depths,
      profile.areaUpTo(profile.width),
      'in2',
    );
    return { profile, told: [width, ...depths], quantity };
  }
  const eave = needed(values.eave, 'eave', shape);
  if (shape === 'level')
    return { profile: level(inches(width), inches(eave)), told: [width, eave], quantity: times(width, eave) };

  const ridge = needed(values.ridge, 'ridge', shape);
  const told = [width, eave, ridge];
  if (compare(eave, ridge) > 0) {
    clash(
      'eave',
      'Depth at the eave',
      `${format(eave)}, deeper than the ridge at ${format(ridge)}`,
      'an eave no deeper than the ridge: the two may be swapped',
    );
  }
  if (shape === 'bowed') {
    if (compare(minus(ridge, eave), over(width, number(2))) > 0) {
      clash(
        'ridge',
        'Depth at the ridge',
        `a rise of ${format(minus(ridge, eave))} over a width of ${format(width)}`,
        'a bow of no more than a half circle',
      );
    }
    const profile = bowed(inches(width), inches(eave), inches(ridge));
    const method = 'W·de + r²/2·(t − sin t), with t = 2·asin(W/2r), r = (W²/4 + h²)/2h, h = dr − de';
    return { profile, told, quantity: byMethod(method, told, profile.areaUpTo(profile.width), 'in2') };
  }
  const profile = (shape === 'one-slope' ? oneSlope : twoSlope)(inches(width), inches(eave), inches(ridge));
  return { profile, told, quantity: over(times(width, plus(eave, ridge)), number(2)) };
}

/** A tape is read to this at the finest: an end told off by no more is the end. */
const FINEST_MARK = quantity(1 / 16, 'in');

function measuredPoints({ points, width }: SectionValues) {
  const inOrder = [...(points ?? [])].sort((a, b) => inches(a.from_eave) - inches(b.from_eave));
  const complain = (found: string, expected: string) =>
    clash('points', 'Depths you measured', found, expected);
  if (inOrder.length < 2) complain(`${inOrder.length} depths`, 'two or more, since the shape is measured');
  const [first, last] = [inOrder[0], inOrder[inOrder.length - 1]];
  if (!first || inches(first.from_eave) !== 0)
    complain(
      `the first at ${first ? format(first.from_eave, { tape: 8 }) : 'no place'}`,
      'a depth at 0 in, the eave itself',
    );
  if (!last || Math.abs(inches(last.from_eave) - inches(width)) > inches(FINEST_MARK)) {
    complain(
      `the last at ${last ? format(last.from_eave, { tape: 8 }) : 'no place'}`,
      `a depth at the other end, ${format(width, { tape: 8 })}`,
    );
  }
  for (const [place, point] of inOrder.entries()) {
    const next = inOrder[place + 1];
    if (next && compare(next.from_eave, point.from_eave) === 0)
      complain(`two depths at ${format(point.from_eave, { tape: 8 })}`, 'one depth a place');
  }
  return inOrder;
}

/** Less of the section than this share is a rounding error, and no room. */
const NO_ROOM = 1e-9;

/**
 * How deep do the two chords of a truss stand in new fill: the upper one, and what of the lower one stands above the old insulation? In
 * inches. @example chordsInFill(1.5, 1) // => 2
 */
export const chordsInFill = (chord: number, old: number): number => chord + Math.max(0, chord - old);

/** What of the section is left to fill: the section less old insulation, less framing. */
export interface FreeSection {
  readonly old: Quantity<'area'>;
  readonly framing: Quantity<'area'>;
  readonly free: Quantity<'area'>;
}

/**
 * How much of the section is free for new fill?
 * Framing counts the two chords of each truss, averaged along the home; what of the bottom chord lies in the old insulation is
 * taken off once, and where a shallow eave has less room than the chords they take no more than that. Webs are left out: they are few
 * and thin.
 * By hand: 10 ft × (12 in − 3 in); no truss spacing given, no framing taken off.
 * @throws EntriesClash if nothing is left to fill.
 * @example freeSection(cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), quantity(3, 'in'), undefined, rules).free.amount.toFixed(6) // => '7.500000'
 */
export function freeSection(
  section: Section,
  oldDepth: Quantity<'length'> | undefined,
  trussSpacing: Quantity<'length'> | undefined,
  rules: Rulebook,
): FreeSection {
  const oldInches = oldDepth ? inches(oldDepth) : 0;
  const old = named(
    inUnit(
      byMethod(
        'old insulation to its depth across the cavity, less where the roof is lower',
        oldDepth ? [section.area, oldDepth] : [section.area],
        areaBelow(section.profile, oldInches),
        'in2',
      ),
      'ft2',
    ),
    'Ao',
    'Area of the old insulation',
  );
  const framing = named(
    framingArea(section, oldDepth, trussSpacing, rules),
    'Af',
    'Mean area of the framing along the home',
  );
  const free = named(minus(minus(section.area, old), framing), 'An', 'Area free for new fill');
  if (free.amount <= NO_ROOM * section.area.amount) {
    if (!oldDepth?.amount) return tooShallow(section.shape, 'no more than the trusses take');
    clash(
      'old_depth',
      'Depth of the old insulation',
      format(oldDepth),
      'less than the cavity holds: no room is left for new fill',
    );
  }
  return { old, framing, free };
}

/**
 * Refuses a cavity in which the old insulation and the framing leave nothing to fill.
 * @throws EntriesClash that names the entry, as `freeSection` does.
 */
export function refuseFilled(...cavity: Parameters<typeof freeSection>): void {
  freeSection(...cavity);
}

function framingArea(
  section: Section,
  oldDepth: Quantity<'length'> | undefined,
  trussSpacing: Quantity<'length'> | undefined,
  rules: Rulebook,
): Quantity<'area'> {
  if (!trussSpacing) return byMethod('no truss spacing given, no framing taken off', [], 0, 'ft2');
  const chord = rules.value('framing.truss.chord-depth');
  const old = oldDepth ? inches(oldDepth) : 0;
  const chords = named(
    inUnit(
      byMethod(
        'top chord, and what of the bottom chord stands above the old insulation, across the cavity; no more than the room there',
        [...section.told, chord, ...(oldDepth ? [oldDepth] : [])],
        areaBelow(section.profile, old + chordsInFill(inches(chord), old)) - areaBelow(section.profile, old),
        'in2',
      ),
      'ft2',
    ),
    'c',
    'Cross-section that chords take where one stands',
  );
  return times(chords, shareOfMembers(trussSpacing, rules));
}

/**
 * Which share of the length do truss members take that stand so far apart?
 * By hand: 1.5 in of every 15 in.
 * @throws EntriesClash for a spacing in which no member has room.
 * @example shareOfMembers(quantity(15, 'in'), rules).amount.toFixed(6) // => '0.100000'
 */
export function shareOfMembers(spacing: Quantity<'length'>, rules: Rulebook): Quantity<'number'> {
  const member = rules.value('framing.truss.member-width');
  if (compare(spacing, member) < 0)
    clash(
      spacing.origin.from === 'method' ? 'trusses_measured' : 'truss_spacing',
      'Truss spacing',
      format(spacing),
      `no less than the width of a truss member, ${format(member)}`,
    );
  return over(member, spacing);
}
