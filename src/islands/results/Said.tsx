import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Worked } from '../use-entries.ts';

/** Words are said once they stood for so long, in milliseconds: at a key of many only the last are. */
const PAUSE = 800;

/** What is said of entries: what they come to, where that is of now; what keeps it back once nobody types. */
export const aloud = (
  { ears, waitingFor }: Pick<Worked<unknown>, 'ears' | 'waitingFor'>,
  answer: string | undefined,
  problems: string | undefined,
): string | undefined =>
  ears === 'nothing' || waitingFor ? undefined : (answer ?? (ears === 'all' ? problems : undefined));

/** A place that always stands, and says to who listens what became of an entry. What is undefined leaves the words before. */
export function Said({ words }: { readonly words: string | undefined }): JSX.Element {
  const [said, say] = useState('');
  useEffect(() => {
    if (words === undefined) return;
    const later = setTimeout(() => say(words), PAUSE);
    return () => clearTimeout(later);
  }, [words]);
  return (
    <p class="visually-hidden" role="status">
      {said}
    </p>
  );
}
