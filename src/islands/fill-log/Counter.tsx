import type { JSX } from 'preact';
import { QUARTER } from '../../calc/log/opening.ts';
import type { LoggedGroup, LoggedOpening } from '../../job/fill-log.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { askedText, inQuartersText } from './quarters.ts';

/** What is counted with a tap. */
const steps = [
  [QUARTER, '1/4 bag'],
  [2 * QUARTER, '1/2 bag'],
  [4 * QUARTER, '1 bag'],
] as const;

/** What went in of what is planned, and what that tells; said aloud together with the name: whoever taps at the foot of a phone is not there. */
export const SoFar = ({
  name,
  of,
  silent = false,
}: {
  readonly name: string;
  readonly of: Pick<LoggedGroup | LoggedOpening, 'bags' | 'planned' | 'target' | 'verdict'>;
  /** Is it said with others that are counted together? */
  readonly silent?: boolean;
}): JSX.Element => (
  <p class="count">
    <output aria-live={silent ? 'off' : 'polite'} aria-atomic="true">
      <span class="visually-hidden">{name}: </span>
      <b>{unbroken(`${inQuartersText(of.bags)} of ${askedText(of)}`)}</b> <span>{of.verdict}</span>
    </output>
  </p>
);

/** What counts more in, each button called after what it counts in. */
export const Steps = ({
  name,
  takes,
  count,
}: {
  readonly name: string;
  /** Can more be counted? */
  readonly takes: boolean;
  readonly count: (more: number) => void;
}): JSX.Element => (
  <>
    {steps.map(([step, words]) => (
      <button
        key={words}
        type="button"
        aria-label={`+ ${words}, ${name}`}
        disabled={!takes}
        onClick={() => count(step)}
      >
        + {words}
      </button>
    ))}
  </>
);

/** The taps of an opening, or of several that are counted together. */
export const Counter = ({
  name,
  takes = true,
  gives,
  state,
  count,
  turn,
}: {
  readonly name: string;
  /** Can more be counted, and less? */
  readonly takes?: boolean;
  readonly gives: boolean;
  readonly state: LoggedOpening['state'];
  readonly count: (more: number) => void;
  readonly turn: (state: LoggedOpening['state']) => void;
}): JSX.Element => (
  <p class="counter">
    <Steps name={name} takes={takes} count={count} />
    {/* At nothing it says so and stays: one that is disabled loses the focus. */}
    <button
      type="button"
      class="plain"
      aria-label={`− 1/4 bag, ${name}`}
      aria-disabled={!gives}
      onClick={() => gives && count(-QUARTER)}
    >
      − 1/4 bag
    </button>
    <button
      type="button"
      class="plain"
      aria-label={state === 'full' ? `Full: open it again, ${name}` : `It is full, ${name}`}
      onClick={() => turn(state === 'full' ? 'filling' : 'full')}
    >
      {state === 'full' ? 'Full: open it again' : 'It is full'}
    </button>
  </p>
);
