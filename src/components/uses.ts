import { askedByCalculations, type Use, usesOf } from '../calc/uses.ts';
import { calculationPage, page, rulePage } from './links.ts';
import { questions } from './questions.ts';
import { references, rulebook } from './rulebook.ts';

/** A place where a rule is used, as a page shows it. */
export interface ShownUse {
  readonly name: string;
  readonly href?: string;
}

const asked = askedByCalculations(rulebook);

/** Where a rule of this rulebook is used, each with its page if it has one. */
export const shownUses = (id: string): ShownUse[] => [
  ...usesOf(id, rulebook, references, asked).map(shown),
  ...questions
    .filter(({ answer }) => answer.from === 'rule' && answer.rule.id === id)
    .map(({ number }) => ({ name: `question ${number} of the lessons`, href: page('train/lessons') })),
];

function shown(use: Use): ShownUse {
  switch (use.kind) {
    case 'calculator':
      return { name: `calculator: ${use.title}`, href: calculationPage(use.name) };
    case 'planner':
      return { name: 'the planner', href: page('plan') };
    case 'drawings':
      return { name: 'drawings' };
    case 'page':
      return { name: `page: ${use.path}`, href: page(use.path) };
    case 'rule':
      return { name: `rule: ${use.title}`, href: rulePage(use.id) };
    case 'caution':
      return { name: `caution: ${use.says}` };
  }
}
