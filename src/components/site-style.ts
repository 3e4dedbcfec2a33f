import { createHash } from 'node:crypto';
import card from '../styles/card.css?url';
import example from '../styles/example.css?url';
import job from '../styles/job.css?url';
import text from '../styles/site.css?inline';
import file from '../styles/site.css?url';
import work from '../styles/work.css?url';

/** The style of every page: as text that a page can hold, as a file that many share, and the sum by which a policy allows the text. */
export const siteStyle = {
  text,
  file,
  sum: `sha256-${createHash('sha256').update(text).digest('base64')}`,
} as const;

/** The one style sheet that a page asks for: of a page that is read, of one that works something out, of an example, of a field card, of a sheet of a job. Each holds all that its pages need, since a second would be a second request. */
export const styleFiles = { site: file, work, example, card, job } as const;
