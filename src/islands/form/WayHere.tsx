import type { JSX } from 'preact';
import { boxId } from './FieldInput.tsx';

/** A field, by the way to it and its name. */
export interface Named {
  readonly field: string;
  readonly label: string;
}

/** A link to the box of a field on this page. The address holds the entries, so it never changes for this. */
export const WayHere = ({ field, label }: Named): JSX.Element => (
  <a
    href={`#${boxId(field)}`}
    onClick={(event) => {
      event.preventDefault();
      document.getElementById(boxId(field))?.focus();
    }}
  >
    {label}
  </a>
);
