import { format } from '../../quantity/format.ts';
import { quantity } from '../../quantity/quantity.ts';
import type { Departure } from './lay-out.ts';
import type { RuleName } from './problem.ts';

const names: Readonly<Record<RuleName, string>> = {
  first: 'the distance of the first hole from its end',
  last: 'the distance of the last hole from its end',
  spacing: 'the gap from hole to hole',
  trusses: 'keeping off the trusses',
  seams: 'keeping off the seams',
  obstacles: 'keeping clear of vents, flues and skylights',
};

const tape = (inches: number): string => format(quantity(inches, 'in'), { tape: 8 });

/**
 * Which rules can't hold together, as a sentence.
 * @example clashSentence(['first', 'seams']) // => 'On this roof these rules can’t all hold: the distance of the first hole from its end and keeping off the seams.'
 * @example clashSentence(['last']) // => 'On this roof one rule can’t hold, whatever the others ask: the distance of the last hole from its end.'
 */
export function clashSentence(clash: readonly RuleName[]): string {
  const [last = '', ...others] = clash.map((rule) => names[rule]).reverse();
  const list = others.length > 0 ? `${others.reverse().join(', ')} and ${last}` : last;
  return others.length > 0
    ? `On this roof these rules can’t all hold: ${list}.`
    : `On this roof one rule can’t hold, whatever the others ask: ${list}.`;
}

/**
 * The departures from the rules, named and measured. Gaps that depart alike are told together, and so are both ends.
 * By hand: 100 in lie 4 in beyond 8 ft.
 * @example departureSentences([{ rule: 'first', hole: 0, found: 100, allowed: { low: 72, high: 96 }, by: 4 }]) // => ['The first hole’s distance from its end is 8 ft 4 in: 4 in over the 6 ft to 8 ft that the rule asks for.']
 */
export function departureSentences(departures: readonly Departure[]): string[] {
  const alike = new Map<string, string[]>();
  for (const departure of departures) {
    const { found, allowed, by } = departure;
    const measured = `is ${tape(found)}: ${tape(by)} ${found < allowed.low ? 'under' : 'over'} the ${tape(allowed.low)} to ${tape(allowed.high)} that the rule asks for.`;
    const [words, where] =
      departure.rule === 'spacing'
        ? [
            `The gap @ ${measured}`,
            `from hole ${departure.between[0] + 1} to hole ${departure.between[1] + 1}`,
          ]
        : [`The @ distance from its end ${measured}`, `${departure.rule} hole’s`];
    alike.set(words, [...(alike.get(words) ?? []), where]);
  }
  return [...alike].map(([words, where]) => words.replace('@', where.join(' and ')));
}
