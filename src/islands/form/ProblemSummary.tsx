import type { JSX } from 'preact';
import type { FieldProblem } from '../../calc/declare/read-fields.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { type FindElsewhere, WayTo } from './WayTo.tsx';

interface ProblemSummaryProps {
  readonly problems: readonly FieldProblem[];
  readonly elsewhere?: FindElsewhere;
  /** Where nothing else says it aloud. */
  readonly role?: 'alert';
}

/** What keeps the figures back, each with a way to its field, here or on the page that asks for it. */
export const ProblemSummary = ({ problems, elsewhere, role }: ProblemSummaryProps): JSX.Element => (
  <div class="problems" role={role}>
    <h2>The figures wait for this</h2>
    <ul>
      {problems.map(({ field, label, found, expected }) => (
        <li key={field + found}>
          <WayTo field={field} label={label} elsewhere={elsewhere} />
          {unbroken(`: found ${found}; expected ${expected}.`)}
        </li>
      ))}
    </ul>
  </div>
);
