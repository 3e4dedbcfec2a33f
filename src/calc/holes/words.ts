import { format } from '../../quantity/format.ts';
import { quantity } from '../../quantity/quantity.ts';
import type { Departure, RuleName } from './search.ts';

const names: Readonly<Record<RuleName, string>> = {
  first: 'the distance of the first hole from its end',
  last: 'the distance of the last hole from its end',
  spacing: 'the gap from hole to hole',
  trusses: 'keeping off the trusses',
  seams: 'keeping off the seams',
  obstacles: 'keeping clear of vents, flues and skylights',
};

const tape = (inches: number): string => format(quantity(inches, 'in'), { tape: 8 });

/** Which rules can't hold together, as a sentence. */
export function clashSentence(clash: readonly RuleName[]): string {
  const [last = '', ...others] = clash.map((rule) => names[rule]).reverse();
  const list = others.length > 0 ? `${others.reverse().join(', ')} and ${last}` : last;
  return `On this roof these rules can’t all hold: ${list}.`;
}

/** One departure from a rule, named and measured. */
export function departureSentence(departure: Departure): string {
  const { rule, found, allowed, by } = departure;
  const where =
    rule === 'spacing'
      ? `The gap from hole ${departure.between[0] + 1} to hole ${departure.between[1] + 1}`
      : `The ${rule} hole’s distance from its end`;
  return `${where} is ${tape(found)}, ${tape(by)} outside ${tape(allowed.low)} to ${tape(allowed.high)}.`;
}
