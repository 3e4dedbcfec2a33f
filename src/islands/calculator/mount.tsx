import type { AnyCalculation } from '../../calc/declare/calculation.ts';
import type { SentRules } from '../../rulebook/rulebook.ts';
import { hydrateAsTyped } from '../as-typed.tsx';
import { bookOf } from '../book.ts';
import { Calculator } from './Calculator.tsx';
import type { Drawn } from './drawn.ts';

/** What is sent for one calculation, and nothing of the others. */
interface SentCalculator {
  readonly calculation: AnyCalculation;
  readonly sent: SentRules;
  readonly drawing: Drawn | undefined;
}

const sentCalculators = import.meta.glob<SentCalculator>('../../generated/calculators/*.ts');

/** Brings a calculator to life where the page has drawn it. */
export async function mount(): Promise<void> {
  const root = document.getElementById('calculator');
  const load = sentCalculators[`../../generated/calculators/${root?.dataset.name}.ts`];
  if (!root || !load) return;
  const { calculation, sent, drawing } = await load();
  hydrateAsTyped(<Calculator calculation={calculation} book={bookOf(sent)} drawing={drawing} />, root);
}
