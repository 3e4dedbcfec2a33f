import { hydrate } from 'preact';
import { RecheckView } from './RecheckView.tsx';

/** Brings the recheck of records to life where the page has drawn it. */
export function mount(): void {
  const root = document.getElementById('recheck');
  if (root) hydrate(<RecheckView />, root);
}
