import type { Profile } from '../calc/cavity/profile.ts';
import type { Section } from '../calc/cavity/section.ts';
import type { Quantity } from '../quantity/quantity.ts';

/** A cavity as its section is drawn. */
export interface DrawnCavity {
  readonly section: Section;
  /** How deep the old insulation lies under the new fill; undefined where there is none. */
  readonly oldOnceFilled: Quantity<'length'> | undefined;
  /** A place across, from the eave, whose depth is told too. */
  readonly askedAt?: Quantity<'length'> | undefined;
}

/** The part of the section that is drawn, and where on the sheet. */
export interface SectionSheet {
  readonly width: number;
  readonly left: number;
  readonly perInch: number;
  readonly from: number;
  readonly to: number;
  /** Only from the eave to the ridge: a section that is the same on both sides may be drawn half. */
  readonly half: boolean;
}

const WIDE = { width: 840, left: 56, drawn: 728 };
const NARROW = { width: 340, left: 48, drawn: 210 };

/** The sheet for wide screens and paper, or for a phone, where a section with two like sides is drawn half. */
export function sectionSheet({ section }: DrawnCavity, size: 'wide' | 'narrow'): SectionSheet {
  const { width } = section.profile;
  const half = size === 'narrow' && (section.shape === 'two-slope' || section.shape === 'bowed');
  const to = half ? width / 2 : width;
  const sheet = size === 'wide' ? WIDE : NARROW;
  return { width: sheet.width, left: sheet.left, perInch: sheet.drawn / to, from: 0, to, half };
}

const STEPS = 60;

/** Places across at which a curve is drawn: evenly spaced, with every corner of the profile among them. */
export function placesAcross(profile: Profile, from: number, to: number): number[] {
  const even = Array.from({ length: STEPS + 1 }, (_, step) => from + ((to - from) * step) / STEPS);
  const corners = profile.corners.filter((place) => place > from && place < to);
  return [...new Set([...even, ...corners])].sort((a, b) => a - b);
}
