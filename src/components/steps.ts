import type { AstroComponentFactory } from 'astro/runtime/server/index.js';

/** What stands at the head of a page of content. */
export interface ContentPage {
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
  readonly order: number;
  /** Ids of the rules whose values stand on it, in order. */
  readonly rules: readonly string[];
  readonly Content: AstroComponentFactory;
}

interface MdxModule {
  readonly default: AstroComponentFactory;
  readonly frontmatter: {
    readonly title?: string;
    readonly summary?: string;
    readonly order?: number;
    readonly rules?: readonly string[];
  };
}

const modules = import.meta.glob<MdxModule>('../../content/en/do/*.mdx', { eager: true });

/** The procedures, in the order of the work. @throws Error for a page without title, summary or order. */
export const steps: readonly ContentPage[] = Object.entries(modules)
  .map(([path, { default: Content, frontmatter }]) => {
    const { title, summary, order, rules = [] } = frontmatter;
    if (!title || !summary || order === undefined)
      throw new Error(
        `${path}: found no title, summary or order, expected all three at the head of the page`,
      );
    return { slug: path.replace(/^.*\/|\.mdx$/g, ''), title, summary, order, rules, Content };
  })
  .sort((a, b) => a.order - b.order);
