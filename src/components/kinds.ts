/** The kinds of thing that search finds, in the word that stands before a result and in the name of its group. */
export const foundKinds = {
  step: 'Steps',
  procedure: 'Procedures',
  trouble: 'When it goes wrong',
  cause: 'What it is likely to be',
  safety: 'Safety',
  explanation: 'Explanations',
  term: 'Terms',
  rule: 'Rules: values with their sources',
  calculator: 'Calculators',
  'sheet of the job': 'Sheets of the job',
  lesson: 'For the trainer',
  page: 'Other pages',
  source: 'Sources',
  check: 'Checks',
} as const;

export type FoundKind = keyof typeof foundKinds;

/** What a reviewer looks for. A crew that looks for a ladder wants the step and the rule first. */
export const auditKinds: readonly FoundKind[] = ['source', 'check'];

/** Pages that search leaves out: a card says again what its procedure says, a list what its pages say. */
export type LeftOut = 'card' | 'list';

export const isFound = (kind: FoundKind | LeftOut): kind is FoundKind => Object.hasOwn(foundKinds, kind);
