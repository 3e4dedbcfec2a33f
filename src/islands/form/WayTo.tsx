import type { JSX } from 'preact';
import { type Named, WayHere } from './WayHere.tsx';

/** Another page where a field is asked for. */
export interface Elsewhere {
  readonly title: string;
  readonly href: string;
}

/** Finds the page where a field is asked for, if it is not the one at hand. */
export type FindElsewhere = (way: string) => Elsewhere | undefined;

/** A link to the box of a field, here or on the page that asks for it, which is given the entries too. */
export function WayTo({
  field,
  label,
  elsewhere,
}: Named & { readonly elsewhere: FindElsewhere }): JSX.Element {
  const other = elsewhere(field);
  return other ? (
    <a
      href={other.href}
      onClick={({ currentTarget }) => {
        currentTarget.hash = location.hash;
      }}
    >
      {label}, on the sheet {other.title}
    </a>
  ) : (
    <WayHere field={field} label={label} />
  );
}

/** The links to fields, as a list of problems asks for them. */
export const wayBy =
  (elsewhere: FindElsewhere) =>
  (named: Named): JSX.Element => <WayTo {...named} elsewhere={elsewhere} />;
