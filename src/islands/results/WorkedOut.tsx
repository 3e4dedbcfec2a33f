import type { JSX } from 'preact';
import { type Titled, workings } from '../../quantity/working.ts';
import { Steps } from './Working.tsx';

/** How some figures were worked out, one after the other and all unfolded: for a page that is read, and for paper. */
export function WorkedOut({
  of,
  heading: Heading,
}: {
  readonly of: readonly Titled[];
  /** The heading over each. */
  readonly heading: 'h3' | 'h4';
}): JSX.Element {
  const told = workings(of);
  return (
    <>
      {of.map(({ title }, place) => (
        <section key={title}>
          <Heading>{title}</Heading>
          <Steps {...(told[place] ?? { lines: [], above: [] })} />
        </section>
      ))}
    </>
  );
}
