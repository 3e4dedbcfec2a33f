import type { JSX } from 'preact';
import { rulePage } from '../../components/links.ts';
import { ruleTitle } from '../rules.ts';

/** Some rules by their titles, each leading to its card. */
export const RuleLinks = ({ ids }: { readonly ids: readonly string[] }): JSX.Element => (
  <ul class="rules">
    {ids.map((id) => (
      <li key={id}>
        <a class="rule" href={rulePage(id)}>
          {ruleTitle(id)}
        </a>
      </li>
    ))}
  </ul>
);
