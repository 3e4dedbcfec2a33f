/** What the oldest browsers lack and the site uses all the same, each with the reason why nobody is worse off. */
export interface Allowed {
  readonly what: readonly string[];
  readonly because: string;
}

export const allowed: readonly Allowed[] = [
  {
    what: ['HTMLDialogElement', '.showModal', ':backdrop'],
    because:
      'where there is no dialogue, a number leads to the page of its rule, as without script, and what can’t be undone is asked in the browser’s own box',
  },
  {
    what: ['min()'],
    because: 'stands behind a size of its own, or in the sheet of the dialogue',
  },
  {
    what: ['CompressionStream', '.stream', '.pipeThrough'],
    because: 'asked for before it is used; without it a link is longer, and unpacking is our own',
  },
  {
    what: ['.share', '.writeText'],
    because: 'asked for before it is used; the link stands in a box to be copied by hand',
  },
  {
    what: ['.text', '.arrayBuffer'],
    because: 'asked of answers alone; a file is made one first, which a test opens without its own',
  },
  {
    what: ['Error.captureStackTrace'],
    because: 'the library that packs files asks for it before it uses it',
  },
  {
    what: ['.draw', '.range', '.take', '.watch', '.format', '.local', '.session', '.toBase64'],
    because: 'names of our own or of a library, not those of the browser',
  },
  {
    what: [
      '@media prefers-color-scheme',
      '@media forced-colors',
      'text-size-adjust',
      'font-family: system-ui',
      'font-family: ui-monospace',
      'text-wrap',
      'text-wrap: balance',
      'text-underline-offset',
      'text-decoration-thickness',
      'outline',
      'cursor',
      'cursor: pointer',
      'cursor: default',
      'paint-order',
      'scroll-margin-top',
      'max()',
    ],
    because: 'looks alone: the light scheme, the browser’s own lines and breaks, no harm to reading',
  },
  {
    what: ['@media scripting'],
    because:
      'without script an older browser goes on showing buttons that do nothing, below a line that says so',
  },
  {
    what: ['contain', 'contain: strict'],
    because: 'speed alone: without it the page is laid out again at each letter, and looks the same',
  },
  {
    what: [':focus-visible'],
    because: 'the browser’s own ring shows where the focus is',
  },
  {
    what: ['overflow-wrap: anywhere'],
    because: 'break-word, set on the whole page, breaks long words too, in all but a shrunken cell',
  },
  {
    what: ['position: sticky'],
    because: 'the build writes -webkit-sticky beside it; without either the bar stands below the form',
  },
  {
    what: ['scroll-padding-bottom', 'scroll-margin-bottom'],
    because:
      'without it what has the focus is brought to the edge of the window, where a bar may lie over it',
  },
  {
    what: [
      ':has',
      '@page',
      'page',
      'size',
      'break-after: avoid',
      'print-color-adjust',
      'print-color-adjust: exact',
    ],
    because: 'paper alone: an old phone prints the head of the page too, and breaks where it will',
  },
];

/** The index of the search comes as its makers wrote it. */
export const searchAllowed: Allowed = {
  what: ['?.', '??', '.grow', '.encodeInto', 'Error.captureStackTrace', 'FinalizationRegistry', '.destroy'],
  because: 'where it can’t start, the search page says so and where every page is listed',
};
