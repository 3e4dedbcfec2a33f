import { hydrate } from 'preact';
import exampleText from '../../../public/example-job.json?raw';
import { exampleEntries } from './example.ts';
import { Planner } from './Planner.tsx';

/** Brings the planner to life where the page has drawn it. */
export function mount(): void {
  const root = document.getElementById('planner');
  if (root) hydrate(<Planner example={exampleEntries(exampleText)} />, root);
}
