import type { PartOutcome } from '../../job/parts/part.ts';

const unanswered = {
  waiting: 'to be entered',
  wrong: 'an entry to mend',
  nothing: 'nothing worked out',
  held: 'behind the open stops',
} as const;

/**
 * What does a part that has no answer say in a line?
 * @example unansweredInALine({ name: 'patch-kit', title: 'Patches', state: 'nothing', why: 'No hole is cut.' }) // => 'Patches: nothing worked out'
 */
export const unansweredInALine = ({ title, state }: PartOutcome): string =>
  state === 'answered' ? title : `${title}: ${unanswered[state]}`;
