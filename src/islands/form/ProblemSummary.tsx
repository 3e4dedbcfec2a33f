import type { JSX } from 'preact';
import type { FieldProblem } from '../../calc/declare/read-fields.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { WayHere } from './WayHere.tsx';

interface ProblemSummaryProps {
  readonly problems: readonly FieldProblem[];
  /** The link to a field, where it may stand on another page. */
  readonly way?: typeof WayHere;
  /** Where nothing else says it aloud. */
  readonly role?: 'alert';
}

/** What keeps the figures back, each with a way to its field, here or on the page that asks for it. */
export const ProblemSummary = ({ problems, way = WayHere, role }: ProblemSummaryProps): JSX.Element => (
  <div class="problems" role={role}>
    <h2>The figures wait for this</h2>
    <ul>
      {problems.map(({ field, label, found, expected }) => (
        <li key={field + found}>
          {way({ field, label })}
          {unbroken(`: found ${found}; expected ${expected}.`)}
        </li>
      ))}
    </ul>
  </div>
);
