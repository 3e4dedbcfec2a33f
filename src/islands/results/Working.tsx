import type { JSX } from 'preact';
import { rulePage } from '../../components/links.ts';
import type { FormatOptions } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { type WorkingInput, working } from '../../quantity/working.ts';

/** How a figure was worked out: symbols, numbers with units, result; each input tagged as yours or as a rule. */
export function Working({
  of,
  options = {},
  inputs = 'all',
}: {
  readonly of: Quantity;
  readonly options?: FormatOptions;
  /** What was typed is left out where it was told just before: in a question. */
  readonly inputs?: 'all' | 'rules';
}): JSX.Element | null {
  const lines = working(of, options);
  if (lines.length === 0) return null;
  return (
    <ol class="working">
      {lines.map((each, place) => (
        <li key={place}>
          <p class="what">{each.rounds ? `${each.label || 'Rounding'} (rounded)` : each.label}</p>
          <p class="sum">
            {each.symbol ? `${each.symbol} = ` : ''}
            {each.symbols}
          </p>
          {each.numbers === '' ? null : <p class="sum">= {each.numbers}</p>}
          <p class="sum result">= {each.result}</p>
          <Inputs of={each.inputs.filter(({ whose }) => inputs === 'all' || whose === 'rule')} />
        </li>
      ))}
    </ol>
  );
}

const Inputs = ({ of }: { readonly of: readonly WorkingInput[] }): JSX.Element | null =>
  of.length === 0 ? null : (
    <ul class="inputs">
      {of.map((input) => (
        <li key={input.label + input.symbol + input.text}>
          <Whence {...input} />
        </li>
      ))}
    </ul>
  );

const Whence = ({ symbol, label, text, whose, rule, part }: WorkingInput): JSX.Element => (
  <>
    {symbol ? `${symbol}: ` : ''}
    {label},{' '}
    {whose === 'rule' && rule ? (
      <a class="rule" href={rulePage(rule)}>
        {text}
      </a>
    ) : (
      text
    )}
    {part && !['low', 'high'].includes(part) ? ` (${part})` : ''}{' '}
    <span class="tag">{whose === 'rule' ? 'a rule' : 'yours'}</span>
  </>
);
