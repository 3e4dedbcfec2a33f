import type { JSX } from 'preact';
import { type FormatOptions, format } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { FigureText } from './FigureText.tsx';

/** A figure with its label, in a list of them. */
export const FigureRow = ({
  label,
  of,
  options = {},
}: {
  readonly label: string;
  readonly of: Quantity;
  readonly options?: FormatOptions;
}): JSX.Element => (
  <div>
    <dt>{label}</dt>
    <dd>
      <FigureText of={of} text={format(of, options)} />
    </dd>
  </div>
);
