import { format } from '../../quantity/format.ts';
import { compare, type Quantity } from '../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import { ifAny, lengthField, listField, optional } from '../declare/field.ts';
import { sectionFields } from './fields.ts';
import { cavitySection, freeSection } from './section.ts';
import { fillVolume, keptOpenVolume } from './volume.ts';
import { wideSection } from './wide-section.ts';

const tape = { tape: 8 } as const;

export const cavity = calculation({
  name: 'cavity-section',
  title: 'Cavity cross-section',
  question: 'How deep is the roof cavity at any place across, and how much will it hold?',
  fields: {
    ...sectionFields,
    at: optional(
      lengthField('x', 'Depth wanted at', 'A place across, from the eave.', '4 ft', {
        zero: 'allowed',
        most: '40 ft',
      }),
    ),
    length: optional(lengthField('L', 'Length', 'Of the cavity, along the home; for its volume.', '66 ft')),
    truss_spacing: optional(
      lengthField('s', 'Truss spacing', 'Centre to centre.', '24 in', { most: '8 ft' }),
    ),
    old_depth: ifAny(
      lengthField('do', 'Depth of the old insulation', 'As it lies now.', '2 in', {
        zero: 'or none',
        most: '6 ft',
      }),
    ),
    kept_open: optional(
      listField(
        'Spaces kept open',
        'Round spaces from ceiling to roof, about flues and the like.',
        'a space kept open',
        {
          across: lengthField('D', 'Width of the open space', 'The flue and the ring about it.', '8 in', {
            most: '6 ft',
          }),
          at: lengthField('x', 'Its place, from the eave', 'Across the home.', '5 ft', {
            zero: 'allowed',
            most: '40 ft',
          }),
        },
      ),
    ),
  },
  example: {
    shape: 'bowed',
    width: '13 ft 10 in',
    eave: '3 in',
    ridge: '15 in',
    at: '3 ft',
    length: '66 ft',
    truss_spacing: '24 in',
    old_depth: '2 in',
    kept_open: [{ across: '9 in', at: '5 ft' }],
  },
  common: {
    shape: ['bowed', 'two-slope', 'one-slope'],
    ridge: ['9 in', '12 in', '15 in', '18 in'],
    width: ['9 ft 10 in', '11 ft 10 in', '13 ft 10 in'],
  },
  work: (values, rules) => {
    const section = cavitySection(values);
    inside(values.at, values.width, 'at', 'Depth wanted at');
    for (const [place, { at }] of (values.kept_open ?? []).entries())
      inside(at, values.width, `kept_open.${place}.at`, 'Its place, from the eave');
    const figures: Record<string, Figure> = {
      area: { label: 'Area of the cross-section', value: section.area },
      mean_depth: { label: 'Mean depth', value: section.meanDepth, format: tape },
      deepest: { label: 'Depth at the deepest place', value: section.deepest, format: tape },
    };
    if (values.at)
      figures.depth_at = {
        label: 'Depth at the place asked for',
        value: section.depthAt(values.at),
        format: tape,
      };
    const free = freeSection(section, values.old_depth, values.truss_spacing, rules);
    figures.free_area = { label: 'Area free for new fill', value: free.free };
    if (values.length) {
      const open = (values.kept_open ?? []).map((space) => keptOpenVolume(section, space, values.old_depth));
      const volume = fillVolume(free, values.length, open);
      figures.volume = { label: 'Volume to fill', value: volume.net };
      if (volume.open) figures.kept_open = { label: 'Spaces kept open', value: volume.open };
    }
    return { figures, cautions: wideSection(values.width, rules), remarks: [] };
  },
});

/** @throws EntriesClash for a place beyond the other eave. */
function inside(
  place: Quantity<'length'> | undefined,
  width: Quantity<'length'>,
  field: string,
  label: string,
): void {
  if (!place || compare(place, width) <= 0) return;
  throw new EntriesClash({
    field,
    label,
    found: format(place, { tape: 8 }),
    expected: `a place inside the cavity, which is ${format(width, { tape: 8 })} wide`,
  });
}
