import type { JSX } from 'preact';
import { theBook } from '../book.ts';
import { rulePage } from '../links.ts';

/** Some rules by their titles, each leading to its card. */
export function RuleLinks({ ids }: { readonly ids: readonly string[] }): JSX.Element {
  const { titleOf } = theBook();
  return (
    <ul class="rules">
      {ids.map((id) => (
        <li key={id}>
          <a class="rule alone" href={rulePage(id)}>
            {titleOf(id)}
          </a>
        </li>
      ))}
    </ul>
  );
}
