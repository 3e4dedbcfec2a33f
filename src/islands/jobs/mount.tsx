import { hydrate } from 'preact';
import exampleText from '../../../public/example-job.json?raw';
import { exampleEntries } from '../job/example.ts';
import { JobsView } from './JobsView.tsx';

/** Brings the list of jobs to life where the page has drawn it. */
export function mountJobs(): void {
  const root = document.getElementById('jobs');
  if (root) hydrate(<JobsView example={exampleEntries(exampleText)} />, root);
}
