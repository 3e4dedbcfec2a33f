import type { JSX } from 'preact';
import type { FormatOptions } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { type Titled, type WorkedOut, type WorkingInput, working, workings } from '../../quantity/working.ts';
import { rulePage } from '../links.ts';
import { Fold } from './Fold.tsx';

/** How a figure was worked out: symbols, numbers with units, result; each input tagged as yours or as a rule. */
export const Working = ({
  of,
  options = {},
  inputs = 'all',
}: {
  readonly of: Quantity;
  readonly options?: FormatOptions;
  /** What was typed is left out where it was told just before: in a question. */
  readonly inputs?: 'all' | 'rules';
}): JSX.Element | null => <Steps lines={working(of, options)} above={[]} inputs={inputs} />;

/** How some figures were worked out, each folded under its own title. A step is told once, where it is met first. */
export function Workings({ of }: { readonly of: readonly Titled[] }): JSX.Element {
  let told: readonly WorkedOut[] | undefined;
  // Worked only where one is unfolded, and then once for all that are.
  const toldAt = (place: number): WorkedOut => {
    told ??= workings(of);
    return told[place] ?? { lines: [], above: [] };
  };
  return (
    <>
      {of.map(({ title }, place) => (
        <Fold key={title} title={title}>
          {() => <Steps {...toldAt(place)} />}
        </Fold>
      ))}
    </>
  );
}

/** The steps of a working, in order. */
export function Steps({
  lines,
  above,
  inputs = 'all',
}: WorkedOut & { readonly inputs?: 'all' | 'rules' }): JSX.Element | null {
  if (lines.length + above.length === 0) return null;
  return (
    <ol class="working">
      {[...new Set(above.map(({ under }) => under))].map((title) => (
        <li key={title}>
          <p class="what">From above, “{title}”</p>
          <ul class="inputs">
            {above
              .filter(({ under }) => under === title)
              .map(({ line: { symbol, label, result } }, place) => (
                <li key={place}>
                  {symbol ? `${symbol}: ` : ''}
                  {label || 'The figure'}, {result}
                </li>
              ))}
          </ul>
        </li>
      ))}
      {lines.map((each, place) => (
        <li key={place}>
          <What label={each.label} rounds={each.rounds} />
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

function What({ label, rounds }: { readonly label: string; readonly rounds: boolean }): JSX.Element | null {
  if (rounds) return <p class="what">{label || 'Rounding'} (rounded)</p>;
  return label ? <p class="what">{label}</p> : null;
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
        {unbroken(text)}
      </a>
    ) : (
      unbroken(text)
    )}
    {part && !['low', 'high'].includes(part) ? ` (${part})` : ''}{' '}
    <span class="tag">{whose === 'rule' ? 'a rule' : 'yours'}</span>
  </>
);
