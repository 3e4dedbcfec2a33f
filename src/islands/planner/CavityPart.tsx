import type { JSX } from 'preact';
import { resistanceDrawing } from '../../drawings/resistance-across.ts';
import { sectionDrawing } from '../../drawings/section.ts';
import { sectionSheet } from '../../drawings/section-sheet.ts';
import { FigureRow } from '../results/FigureRow.tsx';
import { Fold } from '../results/Fold.tsx';
import { Sheet } from '../results/Sheet.tsx';
import { Working } from '../results/Working.tsx';
import { rules } from '../rules.ts';
import type { OfPlan } from './part.ts';

const tape = { tape: 8 } as const;

/** The cavity cut across. */
export function Cavity({ plan }: OfPlan): JSX.Element {
  return (
    <>
      <h2>The cavity</h2>
      <Sheet
        name="section"
        caption="To scale."
        wide={sectionDrawing(plan, sectionSheet(plan, 'wide'), 'section-wide')}
        narrow={() => sectionDrawing(plan, sectionSheet(plan, 'narrow'), 'section-narrow')}
      />
    </>
  );
}

/** What R the taper yields from eave to ridge; nothing where the fill tells none. */
export function ResistanceSheet({ plan }: OfPlan): JSX.Element | null {
  const wide = resistanceDrawing(plan, rules, sectionSheet(plan, 'wide'));
  const narrow = resistanceDrawing(plan, rules, sectionSheet(plan, 'narrow'));
  return wide && narrow ? (
    <Sheet
      name="resistance"
      caption="Old and new together; films, ceiling and framing left out. Thick: as estimated. Thin: the ends of what is uncertain."
      wide={wide}
      narrow={() => narrow}
    />
  ) : null;
}

/** What the cross-section measures. */
export const CavityFigures = ({ plan }: OfPlan): JSX.Element => (
  <>
    <dl class="figures">
      <FigureRow label="Area of the section" of={plan.section.area} />
      <FigureRow label="Mean depth" of={plan.section.meanDepth} options={tape} />
      <FigureRow label="Area free for new fill" of={plan.free.free} />
    </dl>
    <Fold title="How the cross-section is worked out">{() => <Working of={plan.free.free} />}</Fold>
  </>
);
