import type { JSX } from 'preact';
import type { FieldProblem } from '../../calc/declare/read-fields.ts';
import { boxId } from './FieldInput.tsx';

/** Another page where a field is asked for. */
export interface Elsewhere {
  readonly title: string;
  readonly href: string;
}

interface ProblemSummaryProps {
  readonly problems: readonly FieldProblem[];
  readonly elsewhere?: (way: string) => Elsewhere | undefined;
}

/** What keeps the figures back, each with a way to its field, here or on the page that asks for it. */
export const ProblemSummary = ({ problems, elsewhere }: ProblemSummaryProps): JSX.Element => (
  <div class="problems" role="alert">
    <h2>The figures wait for this</h2>
    <ul>
      {problems.map(({ field, label, found, expected }) => {
        const other = elsewhere?.(field);
        return (
          <li key={field + found}>
            <a
              href={other ? other.href : `#${boxId(field)}`}
              onClick={(event) => {
                if (other) {
                  event.currentTarget.hash = location.hash;
                  return;
                }
                // The address holds the entries: go to the field without changing it.
                event.preventDefault();
                document.getElementById(boxId(field))?.focus();
              }}
            >
              {label}
              {other ? `, on the sheet ${other.title}` : ''}
            </a>
            : found {found}; expected {expected}.
          </li>
        );
      })}
    </ul>
  </div>
);
