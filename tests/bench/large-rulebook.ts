import { document, type Files, rule } from '../rulebook/folder.ts';

/** How many rules stand in one file, about as many as in the larger ones of the project. */
const IN_A_FILE = 25;
/** Shares no factor with the five kinds of rule, so that each document is cited. */
const DOCUMENTS = 41;

const value = (place: number, before: string): { value: string; source: string } => {
  const read = `{ kind: document, document: book-${place % DOCUMENTS}, clause: section ${place}, read: reprint }`;
  switch (place % 5) {
    case 0:
      return { value: `{ kind: exact, number: ${place + 1}, unit: in }`, source: read };
    case 1:
      return { value: `{ kind: between, low: ${place}, high: ${place + 2}, unit: ft }`, source: read };
    case 2:
      return { value: `{ kind: at-least, number: ${place}, unit: lb/ft2 }`, source: '{ kind: practice }' };
    case 3:
      return {
        value:
          '{ kind: table, columns: [{ name: board, title: Board, key: word }, { name: load, title: Load, unit: lb/ft2 }], rows: [[thin, 1], [thick, 2]] }',
        source: '{ kind: memory }',
      };
    default:
      // Of the exact one four rules before.
      return {
        value: `{ kind: exact, formula: { times: [2, { rule: ${before} }] }, unit: in }`,
        source: `{ kind: derived, working: It is twice as wide., from: [${before}] }`,
      };
  }
};

/** A rulebook folder of so many rules of every kind, a fifth of them derived, each file and document as the project writes them. */
export function largeRulebook(rules: number): Files {
  const files: Record<string, string> = {};
  for (let place = 0; place < rules; place++) {
    const inFile = Math.floor(place / IN_A_FILE);
    const name = `topic-${inFile % 20}/subject-${inFile}`;
    const before = `${name.replace('/', '.')}.thing-${place - 4}`;
    files[`${name}.yaml`] = (files[`${name}.yaml`] ?? '') + rule(`thing-${place}`, value(place, before));
  }
  return {
    ...files,
    'sources.yaml': Array.from({ length: DOCUMENTS }, (_, place) => document(`book-${place}`)).join(''),
  };
}

/** An agency's settings for one rule in fifty, each an exact one, so that what rests on it is worked out again. */
export const localValues = (rules: number): string =>
  Array.from({ length: rules }, (_, place) => place)
    .filter((place) => place % 50 === 0)
    .map((place) => {
      const inFile = Math.floor(place / IN_A_FILE);
      return `topic-${inFile % 20}.subject-${inFile}.thing-${place}:\n  value: { kind: exact, number: ${place + 3}, unit: in }\n  reason: It is so here.\n  source: { kind: practice }\n`;
    })
    .join('');
