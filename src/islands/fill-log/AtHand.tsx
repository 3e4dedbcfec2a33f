import type { JSX } from 'preact';
import type { LoggedGroup, LoggedOpening } from '../../job/fill-log.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { theBook } from '../book.ts';
import { Steps } from './Counter.tsx';
import { askedText, inQuartersText } from './quarters.ts';

/**
 * The hole being filled, at the foot of a phone where the thumb is: the one counted last, or the first that is not full. A stop of it stands
 * here too: whoever taps does not see what is written farther up.
 */
export function AtHand({
  name,
  of,
  takes,
  change,
  undo,
}: {
  readonly name: string;
  readonly of: Pick<LoggedGroup | LoggedOpening, 'bags' | 'planned' | 'target' | 'verdict' | 'cautions'>;
  /** Can more be counted? */
  readonly takes: boolean;
  readonly change: (more: number) => void;
  /** Takes back what was tapped last; none where nothing was. */
  readonly undo: (() => void) | undefined;
}): JSX.Element {
  const { cautions } = theBook();
  const stops = of.cautions.flatMap((id) => {
    const caution = cautions[id];
    return caution?.level === 'stop' ? [caution.says] : [];
  });
  return (
    <section class="at-hand" aria-label={`At hand: ${name.toLowerCase()}`}>
      <p role="alert" class={stops.length > 0 ? 'stop' : undefined}>
        {stops.length > 0 ? (
          <>
            <strong>Stop.</strong> {stops[0]}
          </>
        ) : null}
      </p>
      <p>
        <strong>{name}</strong>: {unbroken(`${inQuartersText(of.bags)} of ${askedText(of)}`)}, {of.verdict}
      </p>
      <p class="counter">
        <Steps name={name} takes={takes} count={change} />
        <button type="button" class="plain" aria-disabled={!undo} onClick={undo}>
          Undo
        </button>
      </p>
    </section>
  );
}
