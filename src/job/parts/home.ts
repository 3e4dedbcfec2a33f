import { named, number, type Quantity, times } from '../../quantity/quantity.ts';
import type { JobValues } from '../job-fields.ts';

/**
 * How wide are all sections of the home together, inside?
 * By hand: two sections of 14 ft.
 * @example homeWidth({ home: { sections: 'double' }, cavity: { width: quantity(14, 'ft') } }).amount // => 28
 */
export const homeWidth = ({ home, cavity }: JobValues): Quantity<'length'> =>
  home.sections === 'double'
    ? named(times(cavity.width, number(2)), 'W', 'Width of both sections')
    : cavity.width;

/**
 * The floor below the cavity, all sections.
 * By hand: 66 ft × 14 ft.
 * @example floorOf({ home: { sections: 'single', length: quantity(66, 'ft') }, cavity: { width: quantity(14, 'ft') } }).amount.toFixed(6) // => '924.000000'
 */
export const floorOf = (job: JobValues): Quantity<'area'> =>
  named(times(job.home.length, homeWidth(job)), 'A', 'Length times width of the plan');

/**
 * The sections of a double-section home that the same entries describe, or the one of a single-section home.
 * @example halves({ home: { sections: 'double' } }) // => ['back', 'front']
 */
export const halves = ({ home }: JobValues): readonly ('back' | 'front' | undefined)[] =>
  home.sections === 'double' ? ['back', 'front'] : [undefined];

/**
 * A title for one section of a double-section home.
 * @example ofHalf('Lanes', 'back') // => { title: 'Lanes, back section' }
 */
export const ofHalf = (title: string, half: 'back' | 'front' | undefined): { readonly title?: string } =>
  half ? { title: `${title}, ${half} section` } : {};
