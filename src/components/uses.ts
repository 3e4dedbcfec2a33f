import exampleText from '../../public/example-job.json?raw';
import { askedByCalculations, type Use, useName, usesOf } from '../calc/uses.ts';
import { jobSheet } from '../islands/job/sheets.ts';
import { calculationPage, cautionPage, page, rulePage } from '../islands/links.ts';
import { readJobFile } from '../job/job-file.ts';
import { workJob } from '../job/work.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import { contentPages } from './content.ts';
import { rulesOfDrawings } from './drawing-uses.ts';
import { questions } from './questions.ts';
import { references, rulebook, ruleFiles } from './rulebook.ts';
import { sheetsAsking } from './sheet-uses.ts';

/** A place where a rule is used, as a page shows it. */
export interface ShownUse {
  readonly name: string;
  readonly href: string;
}

const asked = askedByCalculations(
  rulebook,
  ruleFiles.checks.map(({ entry }) => entry),
);

/** What the plan of the example job asks for. */
const askedByPlan = new Set<string>();
const example = readJobFile(exampleText);
if (example.ok)
  workJob(
    example.value,
    openRulebook(rulebook, (id) => askedByPlan.add(id)),
  );

/** Where a rule of this rulebook is used, each in words and with its page. */
export const shownUses = (id: string): ShownUse[] => {
  const uses = usesOf(id, rulebook, references, asked);
  return [
    ...uses.filter(({ kind }) => kind === 'calculator').flatMap(shown),
    ...onSheets(id, uses),
    ...inDrawings(id),
    ...uses.filter(({ kind }) => kind !== 'calculator').flatMap(shown),
    ...questions
      .filter(({ answer }) => answer.from === 'rule' && answer.rule.id === id)
      .map(({ number }) => ({ name: `question ${number} of the lessons`, href: page('train/lessons') })),
  ];
};

/** The sheets of a job where it counts; the plan where code of a job names it and no calculation tells which. */
function onSheets(id: string, uses: readonly Use[]): ShownUse[] {
  const found = sheetsAsking(id, asked, askedByPlan);
  const elsewhere = uses.some(({ kind }) => kind === 'calculator');
  const named = uses.some(({ kind }) => kind === 'planner') && !elsewhere;
  const sheets = found.length === 0 && named ? ['' as const] : found;
  return sheets.map((path) => ({
    name: `sheet of the job: ${jobSheet(path).title}`,
    href: page(path === '' ? 'plan' : `plan/${path}`),
  }));
}

/** The drawings that tell it, on each page where they stand; one that stands on none is a drawing of the plan. */
const inDrawings = (id: string): ShownUse[] =>
  rulesOfDrawings
    .filter(({ rules }) => rules.has(id))
    .flatMap(({ name, title }) => {
      const pages = contentPages.filter(({ drawings }) => drawings.includes(name));
      if (pages.length === 0) return [{ name: `drawing: ${title}, on the plan`, href: page('plan') }];
      return pages.map(({ kind, slug, title: on }) => ({
        name: `drawing: ${title}, on “${on}”`,
        href: page(`${kind}/${slug}`),
      }));
    });

/** A use in words, with its page; sheets and drawings are told by what they ask and show. */
function shown(use: Use): ShownUse[] {
  switch (use.kind) {
    case 'calculator':
      return [{ name: useName(use), href: calculationPage(use.name) }];
    case 'page': {
      const title = contentPages.find(({ kind, slug }) => `${kind}/${slug}` === use.path)?.title;
      return [{ name: title === undefined ? useName(use) : `page: ${title}`, href: page(use.path) }];
    }
    case 'rule':
      return [{ name: useName(use), href: rulePage(use.id) }];
    case 'caution':
      return [{ name: useName(use), href: cautionPage(use.id) }];
    case 'planner':
    case 'drawings':
      return [];
  }
}
