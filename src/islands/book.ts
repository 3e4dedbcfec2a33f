import type { ComponentChildren } from 'preact';
import { openRulebook, type Rulebook, type SentRules } from '../rulebook/rulebook.ts';
import { pieceText } from '../rulebook/whose.ts';

/** What an island knows of the rulebook: the whole for a job, for a calculator what it can ask for. */
export interface Book {
  readonly rules: Rulebook;
  readonly cautions: SentRules['cautions'];
  /** The title of a rule, for a link to its page, with whose value it is where that is not the rulebook's own. */
  readonly titleOf: (id: string) => string;
  /** Does some work, and tells which rules it asked for, in the order of their ids. */
  readonly watched: <T>(work: (rules: Rulebook) => T) => {
    readonly result: T;
    readonly asked: readonly string[];
  };
}

export function bookOf(sent: SentRules): Book {
  const rules = openRulebook(sent);
  return {
    rules,
    cautions: sent.cautions,
    titleOf: (id) => pieceText({ rule: id, text: sent.rules[id]?.title ?? id }, rules),
    watched: (work) => {
      const asked = new Set<string>();
      const result = work(openRulebook(sent, (id) => asked.add(id)));
      return { result, asked: [...asked].sort() };
    },
  };
}

let ofThisPage: Book | undefined;

/**
 * Gives everything within it its rulebook. A page has one, so it is no context of Preact's, which every page would carry; while pages are
 * built, each island is drawn to its end before the next begins.
 */
export function WithBook({
  value,
  children,
}: {
  readonly value: Book;
  readonly children: ComponentChildren;
}): ComponentChildren {
  ofThisPage = value;
  return children;
}

/** The rulebook that the island was given. @throws Error outside of one that was given any. */
export function theBook(): Book {
  if (!ofThisPage)
    throw new Error('found no rulebook about this part of the page, expected <WithBook value={...}>');
  return ofThisPage;
}
