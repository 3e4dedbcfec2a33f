import { MOST_PACKED } from '../../src/built/copy-weight.ts';

/** What each thing may take. A figure above its budget is a fault of the site, not of the budget. */
export const budgets = {
  /** A page that is read, packed, with all that loads with it, in bytes: it opens on a poor line on a roof. */
  contentPage: 20_000,
  /** What such a page may ask of its host: each costs a slow line its whole latency. */
  contentRequests: 6,
  /** Letters come with the phone. */
  fonts: 0,
  /** A calculator's page, packed, with its calculation. */
  calculatorPage: 48_000,
  /** The copy for use without a network, packed. */
  copy: MOST_PACKED,
  /** From the first page opened to the whole site on the phone, on a poor line: a crew waits for it before it drives off. */
  copyTime: 60_000,
  /** The largest job, worked in Node, in milliseconds. */
  work: 3,
  /** The holes of a crowded roof of 80 ft. */
  layout: 5,
  /** A rulebook of 3,000 rules: read, asked by every lint, an agency's folder laid over it. */
  rulebook: 1500,
  /** Types and unit tests. */
  typesAndUnit: 60_000,
  /** From a key to the right answer on the screen, on a phone six times as slow as this machine. */
  keystroke: 50,
  /** Above this a browser calls a task long. */
  longTask: 50,
  /** From the words typed to the first find, nothing yet fetched, on a line of 400 kbps. */
  searchCold: 2500,
  /** The same for the next words. */
  searchWarm: 300,
} as const;
