import type { JSX } from 'preact';
import type { FieldProblem } from '../../calc/declare/read-fields.ts';
import { boxId } from './FieldInput.tsx';

/** What keeps the figures back, each with a way to its field. */
export const ProblemSummary = ({ problems }: { readonly problems: readonly FieldProblem[] }): JSX.Element => (
  <div class="problems" role="alert">
    <h2>The figures wait for this</h2>
    <ul>
      {problems.map(({ field, label, found, expected }) => (
        <li key={field + found}>
          <a
            href={`#${boxId(field)}`}
            onClick={(event) => {
              // The address holds the entries: go to the field without changing it.
              event.preventDefault();
              document.getElementById(boxId(field))?.focus();
            }}
          >
            {label}
          </a>
          : found {found}; expected {expected}.
        </li>
      ))}
    </ul>
  </div>
);
