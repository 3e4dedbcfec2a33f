import { hydrate } from 'preact';
import { Calculator } from './Calculator.tsx';

/** Brings a calculator to life where the page has drawn it. */
export function mount(): void {
  const root = document.getElementById('calculator');
  const name = root?.dataset.name;
  if (root && name) hydrate(<Calculator name={name} />, root);
}
