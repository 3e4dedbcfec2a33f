import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import type { FoundKind } from './kinds.ts';

/** The kinds of page that are written, each a folder of content and a part of the site. */
export const contentKinds = {
  do: {
    title: 'Find a step',
    lead: 'The work in order, step by step, each caution before the step it concerns.',
    tells: 'procedure',
  },
  trouble: {
    title: 'When it goes wrong',
    lead: 'What you see, what it is likely to be, what to do now, and what to do before you carry on.',
    tells: 'trouble',
  },
  safety: {
    title: 'Safety',
    lead: 'What can hurt people on this job, where to stop, and who decides.',
    tells: 'safety',
  },
  know: {
    title: 'Why it is so',
    lead: 'How these roofs are built, and why the work is done as it is.',
    tells: 'explanation',
  },
  train: {
    title: 'For the trainer',
    lead: 'An order of lessons through the pages, and questions with answers worked from the rulebook.',
    tells: 'lesson',
  },
} as const satisfies Record<string, { title: string; lead: string; tells: FoundKind }>;

export type ContentKind = keyof typeof contentKinds;

/** What stands at the head of a page of content. */
export interface ContentPage {
  readonly kind: ContentKind;
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
  readonly order: number;
  /** What each number on it is, in order: the id of a rule, or a calculation and its figure, as "fill#bags". */
  readonly notes: readonly string[];
  /** Names of the drawings that stand on it, in order. */
  readonly drawings: readonly string[];
  readonly Content: AstroComponentFactory;
}

interface MdxModule {
  readonly default: AstroComponentFactory;
  readonly frontmatter: {
    readonly title?: string;
    readonly summary?: string;
    readonly order?: number;
    readonly notes?: readonly string[];
    readonly drawings?: readonly string[];
  };
}

const modules = import.meta.glob<MdxModule>('../../content/en/*/*.mdx', { eager: true });

const isKind = (text: string): text is ContentKind => Object.hasOwn(contentKinds, text);

/** Every page that is written, in its order. @throws Error for a page without title, summary or order, or in a folder of no kind. */
export const contentPages: readonly ContentPage[] = Object.entries(modules)
  .map(([path, { default: Content, frontmatter }]) => {
    const { title, summary, order, notes = [], drawings = [] } = frontmatter;
    const [kind = '', file = ''] = path.split('/').slice(-2);
    if (!isKind(kind)) {
      const kinds = Object.keys(contentKinds).join(', ');
      throw new Error(`${path}: found the folder "${kind}", expected one of ${kinds}`);
    }
    if (!title || !summary || order === undefined)
      throw new Error(
        `${path}: found no title, summary or order, expected all three at the head of the page`,
      );
    return { kind, slug: file.replace(/\.mdx$/, ''), title, summary, order, notes, drawings, Content };
  })
  .sort((a, b) => a.order - b.order);

/** The pages of one kind, in their order. */
export const pagesOf = (kind: ContentKind): readonly ContentPage[] =>
  contentPages.filter((each) => each.kind === kind);
