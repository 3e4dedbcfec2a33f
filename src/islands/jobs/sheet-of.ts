import type { KeptJob } from '../../job/kept-job.ts';
import { page } from '../links.ts';
import { addressOfKept, addressOfUnkept } from './addresses.ts';
import { jobStore } from './store.ts';

/** The sheet that a job opens on. A job that the browser does not keep goes along in the address. */
export const sheetOf = ({ id, entries }: KeptJob): string =>
  `${page('plan')}#${jobStore().whyUnkept(id) === undefined ? addressOfKept(id) : addressOfUnkept(id, entries)}`;
