import type { JSX } from 'preact';
import { boxId } from './FieldInput.tsx';

/** Another page where a field is asked for. */
export interface Elsewhere {
  readonly title: string;
  readonly href: string;
}

/** Finds the page where a field is asked for, if it is not the one at hand. */
export type FindElsewhere = (way: string) => Elsewhere | undefined;

/** A link to the box of a field, here or on the page that asks for it. The address holds the entries, so it never changes for this. */
export function WayTo({
  field,
  label,
  elsewhere,
}: {
  readonly field: string;
  readonly label: string;
  readonly elsewhere?: FindElsewhere | undefined;
}): JSX.Element {
  const other = elsewhere?.(field);
  return (
    <a
      href={other ? other.href : `#${boxId(field)}`}
      onClick={(event) => {
        if (other) {
          event.currentTarget.hash = location.hash;
          return;
        }
        event.preventDefault();
        document.getElementById(boxId(field))?.focus();
      }}
    >
      {label}
      {other ? `, on the sheet ${other.title}` : ''}
    </a>
  );
}
