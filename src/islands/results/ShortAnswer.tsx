import type { JSX } from 'preact';
import { unbroken } from '../../quantity/unbroken.ts';

/** The answer in a line, in a bar at the foot of a phone, where the thumb is, or of the entries at a desk; touched, it goes to the whole answer. */
export const ShortAnswer = ({
  words,
  old,
  to,
}: {
  readonly words: string;
  /** What a figure of before waits for. */
  readonly old: object | undefined;
  /** The id of the whole answer. */
  readonly to: string;
}): JSX.Element => (
  <button type="button" class="short-answer" onClick={() => goTo(to)}>
    {old ? 'Figures of before: ' : ''}
    {unbroken(words)}
  </button>
);

/** Not by the address, which holds the entries. */
function goTo(id: string): void {
  const answer = document.getElementById(id);
  answer?.scrollIntoView();
  answer?.focus({ preventScroll: true });
}
