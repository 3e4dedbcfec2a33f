import { createHash } from 'node:crypto';
import text from '../styles/site.css?inline';
import file from '../styles/site.css?url';

/** The style of every page: as text that a page can hold, as a file that many share, and the sum by which a policy allows the text. */
export const siteStyle = {
  text,
  file,
  sum: `sha256-${createHash('sha256').update(text).digest('base64')}`,
} as const;
