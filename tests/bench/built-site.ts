import { copyList } from '../../src/built/copy-list.ts';
import { copyWeight } from '../../src/built/copy-weight.ts';
import { parcelsOf } from '../../src/built/parcels.ts';
import { budgets } from './budgets.ts';
import type { Figure, Part } from './figure.ts';
import { packed, pageLoad, type Site } from './page-load.ts';

/** The folders of pages that are read. */
const contentFolders = [
  'do',
  'cards',
  'know',
  'trouble',
  'safety',
  'train',
  'terms',
  'rules',
  'cautions',
  'sources',
  'changes',
] as const;

/** Pages of a calculator that are only read. */
const EXAMPLES = /^calculators\/.+\/example\/index\.html$/;

const LETTERS = /\.(woff2?|ttf|otf|eot)$/;

/** One page, with what it brings. */
interface Weighed {
  readonly page: string;
  readonly bytes: number;
  readonly requests: number;
  readonly parts: readonly Part[];
}

const byWeight = (parts: readonly Part[]): readonly Part[] => [...parts].sort(([, a], [, b]) => b - a);
const sum = (parts: readonly Part[]): number => parts.reduce((all, [, bytes]) => all + bytes, 0);

/** A page weighed with all that loads with it. */
function weigh(site: Site, page: string): Weighed {
  const parts = pageLoad(site, page).map((file): Part => [file, packed(site, file)]);
  return { page, bytes: sum(parts), requests: parts.length, parts: byWeight(parts) };
}

const heaviest = (all: readonly Weighed[], of: 'bytes' | 'requests'): Weighed | undefined =>
  [...all].sort((a, b) => b[of] - a[of])[0];

const overIn = (all: readonly Weighed[], of: 'bytes' | 'requests', budget: number): string => {
  const over = all.filter((each) => each[of] > budget).length;
  return `${over} of ${all.length} over`;
};

/** The page a file shows: "do/patching/". */
const address = (file: string): string => `/${file.replace(/index\.html$/, '')}`;

/** Every size and count of a built site that has a budget. The same files give the same figures. */
export function builtSite(site: Site): Figure[] {
  const pages = [...site.keys()].filter((file) => /(^|\/)index\.html$/.test(file)).sort();
  const groups = new Map<string, Weighed[]>([
    ['front page', pages.filter((file) => file === 'index.html').map((file) => weigh(site, file))],
    ...contentFolders.map(
      (folder) =>
        [
          `${folder}/`,
          pages.filter((file) => file.startsWith(`${folder}/`)).map((file) => weigh(site, file)),
        ] as const,
    ),
    ['examples of calculators', pages.filter((file) => EXAMPLES.test(file)).map((file) => weigh(site, file))],
  ]);
  const calculators = pages
    .filter((file) => /^calculators\/[^/]+\/index\.html$/.test(file))
    .map((file) => weigh(site, file));
  const list = copyList(site);
  const copy = copyWeight(site, list, parcelsOf(site, list));
  const letters = [...site.keys()].filter((file) => LETTERS.test(file));

  const content = [...groups].flatMap(([name, all]): Figure[] => {
    const [heavy, many] = [heaviest(all, 'bytes'), heaviest(all, 'requests')];
    // A kind that is not there has no pages to weigh, and is told, not passed over.
    if (!heavy || !many) return [{ what: `no page in ${name}`, unit: '', found: Number.NaN, budget: 0 }];
    const { contentPage, contentRequests } = budgets;
    return [
      {
        what: `${name} heaviest, ${address(heavy.page)} (${overIn(all, 'bytes', contentPage)})`,
        unit: 'B',
        found: heavy.bytes,
        budget: contentPage,
        parts: heavy.parts,
      },
      {
        what: `${name} most requests, ${address(many.page)} (${overIn(all, 'requests', contentRequests)})`,
        unit: '',
        found: many.requests,
        budget: contentRequests,
        parts: many.parts,
        partsIn: 'B',
      },
    ];
  });
  const heavy = heaviest(calculators, 'bytes');
  return [
    ...content,
    {
      what: 'files of letters in the site',
      unit: '',
      found: letters.length,
      budget: budgets.fonts,
      parts: letters.map((file) => [file, packed(site, file)] as const),
      partsIn: 'B',
    },
    {
      what: heavy
        ? `calculators/ heaviest, ${address(heavy.page)} (${overIn(calculators, 'bytes', budgets.calculatorPage)})`
        : 'no page of a calculator',
      unit: 'B',
      found: heavy?.bytes ?? Number.NaN,
      budget: budgets.calculatorPage,
      parts: heavy?.parts ?? [],
    },
    {
      what: `copy for use without a network, ${Object.keys(list.files).length} files in ${copy.requests} requests`,
      unit: 'B',
      found: copy.total,
      budget: budgets.copy,
      parts: copy.parts,
    },
  ];
}
