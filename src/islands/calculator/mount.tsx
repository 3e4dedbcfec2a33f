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

/** Brings a calculator to life where its page has drawn it. */
export function mount({ calculation, sent, drawing }: SentCalculator): void {
  const root = document.getElementById('calculator');
  if (!root) return;
  hydrateAsTyped(<Calculator calculation={calculation} book={bookOf(sent)} drawing={drawing} />, root);
}
