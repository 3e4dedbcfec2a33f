import type { JSX } from 'preact';
import type { LoggedGroup, LoggedOpening } from '../../job/fill-log.ts';

/** Bags spread, and the last one of an opening is seldom whole. */
const MORE = 2;

/**
 * Boxes for a log that is kept with a pencil: one for each bag that is still to go in, two more, and one for when nothing more goes in.
 * Only on paper.
 */
export const Tally = ({ left }: Pick<LoggedOpening | LoggedGroup, 'left'>): JSX.Element => (
  <p class="tally paper-only">
    A stroke for each bag:{' '}
    {Array.from({ length: Math.ceil(left.amount) + MORE }, (_, place) => (
      <i key={place} class={place < left.amount ? undefined : 'beyond'} />
    ))}{' '}
    Full: <i />
  </p>
);
