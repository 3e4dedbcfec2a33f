import { type Entries, withEntry } from '../calc/declare/entries.ts';
import { firstName } from './copy-name.ts';
import type { JobEntries } from './job-file.ts';
import { isSet } from './shape.ts';

/** What tells of things seen, done or signed at one home, and of no other. */
const OF_ONE_HOME = {
  survey: 'the survey',
  machine: 'the machine’s figures',
  line: 'the overhead line',
  weather: 'the heat of the day',
  log: 'the fill log',
  receipt: 'the receipt',
} as const;

export type OfOneHome = keyof typeof OF_ONE_HOME;

const groups = Object.keys(OF_ONE_HOME) as OfOneHome[];

/** What an engineer wrote of one ceiling stands among what was measured there. */
const OF_ONE_CEILING = ['engineer_load', 'engineer'];

/** Said of a job that was begun with nothing filled in. It is said aloud: of a job that says nothing, nobody knows how it was begun. */
export const NONE_OF_EXAMPLE: JobEntries = { of_example: { survey: 'none' } };

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What makes it another home; that of a copy is the first's, since of two tabs that part, one goes on as a copy. */
const homeOf = ({ name, home, cavity }: JobEntries): readonly unknown[] => [
  typeof name === 'string' ? firstName(name) : name,
  home,
  cavity,
];

const entriesOf = (entries: JobEntries, group: string): Entries => {
  const typed = entries[group];
  return isSet(typed) ? typed : {};
};

/**
 * Which entries of a group came with the example and were not entered since, by name, and rows of a list by name and place, as "fills.1"? A job says so
 * itself; of one that does not, a group that is the example’s to the letter is taken to be.
 */
function marked(entries: JobEntries, example: JobEntries, group: OfOneHome): readonly string[] {
  const [own, theirs] = [entriesOf(entries, group), entriesOf(example, group)];
  if (!isSet(entries.of_example)) return same(own, theirs) ? Object.keys(own) : [];
  const words = String(entries.of_example[group] ?? '').split(' ');
  return Object.keys(own).flatMap((name) => {
    const whole = words.includes(name);
    if (whole && same(own[name], theirs[name])) return [name];
    return rowsOf(own, name).flatMap((row, place) =>
      (whole || words.includes(`${name}.${place}`)) && rowsOf(theirs, name).some((each) => same(each, row))
        ? [`${name}.${place}`]
        : [],
    );
  });
}

/** The rows of a list; none of what is no list. */
const rowsOf = (entries: Entries, name: string): readonly unknown[] => {
  const list = entries[name];
  return Array.isArray(list) ? list : [];
};

/** The entries of a group without some of them, and of its lists without some of their rows. */
function without(entries: Entries, names: readonly string[]): Entries {
  const left = Object.entries(entries).flatMap(([name, value]) => {
    if (names.includes(name)) return [];
    if (!Array.isArray(value) || !names.some((each) => each.startsWith(`${name}.`))) return [[name, value]];
    const rows = value.filter((_, place) => !names.includes(`${name}.${place}`));
    return rows.length > 0 ? [[name, rows]] : [];
  });
  return Object.fromEntries(left);
}

/** Of the marks on a group, those that hold once one of its entries was entered. A row is known again wherever it stands in the list. */
function stillMarked(
  marks: readonly string[],
  [name, place]: readonly (string | undefined)[],
  before: Entries,
  after: Entries,
): readonly string[] {
  if (name === undefined) return [];
  const others = marks.filter((mark) => mark !== name && !mark.startsWith(`${name}.`));
  const rows = rowsOf(before, name).filter(
    (_, at) => String(at) !== place && (marks.includes(name) || marks.includes(`${name}.${at}`)),
  );
  const kept = rowsOf(after, name).flatMap((row, at) => {
    const known = String(at) === place ? -1 : rows.findIndex((each) => same(each, row));
    if (known < 0) return [];
    rows.splice(known, 1);
    return [`${name}.${at}`];
  });
  return [...others, ...kept];
}

/**
 * What of a job’s entries tells of the example’s home, and not of its own? Nothing, as long as it is the example’s home.
 * @example stillExamples({ name: 'Lot 8', survey: { leaks: 'none found' } }, { survey: { leaks: 'none found' } }) // => ['survey']
 */
export const stillExamples = (entries: JobEntries, example: JobEntries): OfOneHome[] =>
  same(homeOf(entries), homeOf(example))
    ? []
    : groups.filter((group) => marked(entries, example, group).length > 0);

/**
 * The entries without what tells of the example’s home, or a home that nobody saw would be told ready.
 * @example ofThisHome({ name: 'Lot 8', survey: { leaks: 'none found' } }, { survey: { leaks: 'none found' } }) // => { name: 'Lot 8', survey: {}, of_example: { survey: 'none' } }
 */
export function ofThisHome(entries: JobEntries, example: JobEntries): JobEntries {
  const left = stillExamples(entries, example).map((group) => {
    const names = marked(entries, example, group);
    return [group, without(entriesOf(entries, group), names)];
  });
  return left.length === 0 ? entries : { ...entries, ...Object.fromEntries(left), ...NONE_OF_EXAMPLE };
}

/**
 * The entries once one more was entered: it is the job’s own from then on.
 * @example entered({ name: 'Lot 8' }, { name: 'Lot 4' }, ['crew'], 'Blue crew') // => { name: 'Lot 8', crew: 'Blue crew' }
 */
export function entered(
  entries: JobEntries,
  example: JobEntries,
  way: readonly string[],
  value: unknown,
): JobEntries {
  const next = withEntry(entries, way, value);
  const [group = '', ...within] = way;
  if (!(groups as readonly string[]).includes(group)) return next;
  const still = groups.flatMap((each) => {
    const marks = marked(entries, example, each);
    const names =
      each === group ? stillMarked(marks, within, entriesOf(entries, each), entriesOf(next, each)) : marks;
    return names.length > 0 ? [[each, names.join(' ')]] : [];
  });
  return { ...next, ...(still.length > 0 ? { of_example: Object.fromEntries(still) } : NONE_OF_EXAMPLE) };
}

/**
 * The entries that a job has for another home, and what stays with the first because it was seen, done or signed there.
 * @example forAnotherHome({ name: 'Lot 4', log: { openings: [] } }) // => { entries: { name: 'Lot 4', of_example: { survey: 'none' } }, left: ['the fill log'] }
 */
export function forAnotherHome(entries: JobEntries): {
  readonly entries: JobEntries;
  readonly left: readonly string[];
} {
  const left = groups.filter((group) => !same(entries[group] ?? {}, {}));
  const others = Object.entries(entries).filter(([name]) => !(left as readonly string[]).includes(name));
  const ceiling = Object.entries(entriesOf(entries, 'ceiling'));
  const measured = ceiling.filter(([name]) => !OF_ONE_CEILING.includes(name));
  const signed = measured.length < ceiling.length;
  return {
    entries: {
      ...Object.fromEntries(others),
      ...(signed ? { ceiling: Object.fromEntries(measured) } : {}),
      ...NONE_OF_EXAMPLE,
    },
    left: [...left.map((group) => OF_ONE_HOME[group]), ...(signed ? ['what an engineer wrote'] : [])],
  };
}

/** Their names in a sentence. @example namesOf(['survey', 'log']) // => 'the survey, the fill log' */
export const namesOf = (of: readonly OfOneHome[]): string => of.map((group) => OF_ONE_HOME[group]).join(', ');
