import { askedByCalculations, type Use, useName, usesOf } from '../calc/uses.ts';
import { calculationPage, page, rulePage } from './links.ts';
import { questions } from './questions.ts';
import { references, rulebook, ruleFiles } from './rulebook.ts';

/** A place where a rule is used, as a page shows it. */
export interface ShownUse {
  readonly name: string;
  readonly href?: string;
}

const asked = askedByCalculations(
  rulebook,
  ruleFiles.checks.map(({ entry }) => entry),
);

/** Where a rule of this rulebook is used, each with its page if it has one. */
export const shownUses = (id: string): ShownUse[] => [
  ...usesOf(id, rulebook, references, asked).map(shown),
  ...questions
    .filter(({ answer }) => answer.from === 'rule' && answer.rule.id === id)
    .map(({ number }) => ({ name: `question ${number} of the lessons`, href: page('train/lessons') })),
];

function shown(use: Use): ShownUse {
  const href = pageOfUse(use);
  return href === undefined ? { name: useName(use) } : { name: useName(use), href };
}

function pageOfUse(use: Use): string | undefined {
  switch (use.kind) {
    case 'calculator':
      return calculationPage(use.name);
    case 'planner':
      return page('plan');
    case 'page':
      return page(use.path);
    case 'rule':
      return rulePage(use.id);
    case 'drawings':
    case 'caution':
      return undefined;
  }
}
