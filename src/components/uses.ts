import { calculations } from '../calc/calculations.ts';
import { answer } from '../calc/declare/calculation.ts';
import { rulesIn } from '../rulebook/formula.ts';
import { placeholdersIn } from '../rulebook/placeholders.ts';
import type { References } from '../rulebook/references.ts';
import { openRulebook, type RulebookData } from '../rulebook/rulebook.ts';
import { calculationPage, page, rulePage } from './links.ts';
import { questions } from './questions.ts';

export interface Use {
  readonly name: string;
  readonly href?: string;
}

/** Which rules does each calculation ask for? Watched while each works its own example. */
function askedByCalculations(data: RulebookData): ReadonlyMap<string, ReadonlySet<string>> {
  return new Map(
    calculations.map((declared) => {
      const asked = new Set<string>();
      answer(
        declared,
        declared.example,
        openRulebook(data, (id) => asked.add(id)),
      );
      return [declared.name, asked];
    }),
  );
}

let asked: ReadonlyMap<string, ReadonlySet<string>> | undefined;

/** Where is a rule used? Calculations by watching them ask, the planner, drawings and pages by what they name, rules and cautions by their own words. */
export function usesOf(id: string, data: RulebookData, references: References): Use[] {
  asked ??= askedByCalculations(data);
  const files = references.get(id) ?? [];
  const naming = (folder: string) => files.some((file) => file.startsWith(folder));
  return [
    ...calculations
      .filter(({ name }) => asked?.get(name)?.has(id))
      .map(({ name, title }) => ({ name: `calculator: ${title}`, href: calculationPage(name) })),
    ...(naming('src/job/') || naming('src/calc/') ? [{ name: 'the planner', href: page('plan') }] : []),
    ...(naming('src/drawings/') ? [{ name: 'drawings' }] : []),
    ...files
      .filter((file) => file.startsWith('content/en/'))
      .map((file) => ({
        name: `page: ${file.replace('content/en/', '').replace('.mdx', '')}`,
        href: page(file.replace('content/en/', '').replace('.mdx', '')),
      })),
    ...questions
      .filter(({ answer }) => answer.from === 'rule' && answer.rule.id === id)
      .map(({ number }) => ({ name: `question ${number} of the lessons`, href: page('train/lessons') })),
    ...Object.values(data.rules)
      .filter(
        ({ value, source }) =>
          (source.kind === 'derived' && source.from.includes(id)) ||
          (value.kind === 'exact' && value.formula !== undefined && rulesIn(value.formula).includes(id)),
      )
      .map((rule) => ({ name: `rule: ${rule.title}`, href: rulePage(rule.id) })),
    ...Object.values(data.cautions)
      .filter(
        (caution) =>
          caution.rules?.includes(id) ||
          placeholdersIn(`${caution.says} ${caution.do}`).some(({ rule }) => rule === id),
      )
      .map((caution) => ({ name: `caution: ${caution.says.replace(/\{[^}]*\}/g, '…')}` })),
  ];
}
