import { hydrate } from 'preact';
import exampleText from '../../../public/example-job.json?raw';
import { exampleEntries } from '../job/example.ts';
import { PhotographsView } from './PhotographsView.tsx';

/** Brings the list of photographs to life where the page has drawn it. */
export function mountPhotographs(): void {
  const root = document.getElementById('job');
  if (root) hydrate(<PhotographsView example={exampleEntries(exampleText)} />, root);
}
