import type { Dimension } from '../quantity/dimension.ts';
import { amountIn, minus, number, over, plus, type Quantity, quantity, times } from '../quantity/quantity.ts';
import { isUnitName, type UnitName, type UnitOf } from '../quantity/units.ts';
import type { Formula, RawRule } from './schema.ts';

/** Every rule a formula takes a value from. @example rulesIn({ add: [{ rule: 'a.b' }, 2] }) // => ['a.b'] */
export function rulesIn(formula: Formula): string[] {
  if (typeof formula === 'number') return [];
  if ('rule' in formula) return [formula.rule];
  return Object.values(formula).flatMap((parts: Formula[]) => parts.flatMap(rulesIn));
}

/** A formula that can't be worked out: it leads back to itself, or to a rule without one value. */
export class FormulaError extends Error {
  override name = 'FormulaError';
  readonly found: string;
  readonly expected: string;
  constructor(rule: string, found: string, expected = 'a formula that can be worked out') {
    super(`${rule}: found ${found}, expected ${expected}`);
    this.found = found;
    this.expected = expected;
  }
}

/**
 * The number a derived rule comes to, in its own unit.
 * By hand: 2 + 3.
 * @throws FormulaError if the formula turns in a circle, or takes a value from a rule that has none such; of a range it names an end, of
 * nothing else.
 * @example workOut('a.b', new Map([['a.b', { value: { kind: 'exact', unit: 'in', formula: { add: [{ rule: 'a.c' }, { rule: 'a.d' }] } } }], ['a.c', { id: 'a.c', value: { kind: 'exact', number: 2, unit: 'in' } }], ['a.d', { id: 'a.d', value: { kind: 'exact', number: 3, unit: 'in' } }]])) // => 5
 */
export function workOut(
  id: string,
  rules: ReadonlyMap<string, RawRule>,
  chain: readonly string[] = [],
): number {
  if (chain.includes(id)) throw new FormulaError(id, `a circle: ${[...chain, id].join(' -> ')}`);
  const value = rules.get(id)?.value;
  if (value?.kind !== 'exact') throw new FormulaError(id, `"${id}", which has no formula`);
  if (value.formula === undefined) return value.number ?? Number.NaN;
  const result = evaluate(value.formula, rules, [...chain, id]);
  return amountIn(result, value.unit as UnitOf<Dimension>);
}

function evaluate(formula: Formula, rules: ReadonlyMap<string, RawRule>, chain: readonly string[]): Quantity {
  if (typeof formula === 'number') return number(formula);
  const each = (part: Formula): Quantity => evaluate(part, rules, chain);
  if ('rule' in formula) {
    const refuse = (found: string, expected?: string): never => {
      throw new FormulaError(chain.at(-1) ?? '', found, expected);
    };
    const value = rules.get(formula.rule)?.value;
    if (!value) return refuse(`"${formula.rule}", which is no rule`);
    if (value.kind === 'one-of' || value.kind === 'table')
      return refuse(`"${formula.rule}", a ${value.kind}`);
    if (!isUnitName(value.unit)) return refuse(`"${formula.rule}" in the unknown unit "${value.unit}"`);
    const unit: UnitName = value.unit;
    const { part } = formula;
    if (value.kind === 'between')
      return part
        ? quantity(value[part], unit)
        : refuse(`"${formula.rule}", a range, by itself`, 'one end of it, as part: low or part: high');
    if (part) return refuse(`part: ${part} of "${formula.rule}", a single value`, 'the rule without a part');
    return quantity(value.kind === 'exact' ? workOut(formula.rule, rules, chain) : value.number, unit);
  }
  if ('add' in formula) return formula.add.map(each).reduce((a, b) => plus(a, b));
  if ('times' in formula) return formula.times.map(each).reduce((a, b) => times(a, b));
  const [a, b] = 'subtract' in formula ? formula.subtract : formula.divide;
  return 'subtract' in formula ? minus(each(a), each(b)) : over(each(a), each(b));
}
