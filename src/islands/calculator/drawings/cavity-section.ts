import { cavity } from '../../../calc/cavity/declaration.ts';
import { cavitySection } from '../../../calc/cavity/section.ts';
import { sectionDrawing } from '../../../drawings/section.ts';
import { sectionSheet } from '../../../drawings/section-sheet.ts';
import { drawn } from '../drawn.ts';

export const drawing = drawn(cavity, (values) => {
  const cavity = { section: cavitySection(values), oldOnceFilled: values.old_depth, askedAt: values.at };
  return [
    {
      caption: 'To scale.',
      wide: sectionDrawing(cavity, sectionSheet(cavity, 'wide'), 'cavity-section-1-wide'),
      narrow: sectionDrawing(cavity, sectionSheet(cavity, 'narrow'), 'cavity-section-1-narrow'),
    },
  ];
});
