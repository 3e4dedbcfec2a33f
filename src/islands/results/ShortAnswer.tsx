import type { JSX } from 'preact';

/** The answer in a line, in a bar at the foot of a phone, where the thumb is; touched, it goes to the whole answer. */
export const ShortAnswer = ({
  words,
  to,
}: {
  readonly words: string;
  /** The id of the whole answer. */
  readonly to: string;
}): JSX.Element => (
  <button type="button" class="short-answer" onClick={() => goTo(to)}>
    {words}
  </button>
);

/** Not by the address, which holds the entries. */
function goTo(id: string): void {
  const answer = document.getElementById(id);
  answer?.scrollIntoView();
  answer?.focus({ preventScroll: true });
}
