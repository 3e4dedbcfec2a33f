import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Entries } from '../calc/declare/entries.ts';
import { withEntry } from '../calc/declare/entries.ts';
import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import { arrived, forget, keep, kept } from './keeping.ts';

/** Changes an entry; a row that was just begun is not told off before it is left. */
export type SetEntry = (way: readonly string[], value: unknown, begun?: string) => void;

/** Where somebody is in a form: the box being typed in, the row that was begun, and what was left or changed whole so far. */
interface At {
  readonly typing?: string | undefined;
  readonly begun?: string | undefined;
  readonly left: readonly string[];
}

const NOWHERE: At = { left: [] };

const withOne = (all: readonly string[], one: string): readonly string[] =>
  all.includes(one) ? all : [...all, one];

/** What entries work out to, and what is wrong with them. */
export interface Worked<T> {
  /** The newest result that could be worked out, if any ever could. */
  readonly result: T | undefined;
  /** What keeps the figures back; nothing while figures of before stand. */
  readonly problems: readonly FieldProblem[];
  /** What is told at the boxes: not of the one being typed in, and of an empty one only once it was left. */
  readonly wrong: readonly FieldProblem[];
  /** The result is of earlier entries, since a field is still being typed in. */
  readonly waitingFor: FieldProblem | undefined;
  /** What is there to be told aloud? Nothing before anything was entered; of what is wrong nothing while somebody types. */
  readonly ears: 'nothing' | 'figures' | 'all';
  /** Says which entry is being changed, or which row of a list was begun. */
  readonly typing: (way: readonly string[], value: unknown, begun?: string) => void;
  readonly leave: (way: string) => void;
  /** Nothing is being typed in. */
  readonly settle: () => void;
}

export interface EntriesState<T> extends Omit<Worked<T>, 'typing' | 'settle'> {
  readonly entries: Entries;
  readonly set: SetEntry;
  /** Back to the example, with what was kept let go. */
  readonly reset: () => void;
}

/**
 * Works entries out at every change.
 * @param line what the entries are a change of: figures of before are of the same line, or those of one home would stand for another
 */
export function useWorked<T>(
  entries: Entries,
  work: (entries: Entries) => Read<T>,
  line: unknown,
): Worked<T> {
  const [{ typing, begun, left }, setAt] = useState(NOWHERE);
  // Not a state: to keep it draws nothing anew.
  const last = useRef<readonly [line?: unknown, result?: T]>([]);
  const read = useMemo(() => work(entries), [entries, work]);
  useEffect(() => {
    if (read.ok) last.current = [line, read.value];
  }, [read, line]);
  const all = read.ok ? [] : read.problems;
  const onlyTyping = all.every(({ field }) => field === typing || field.startsWith(`${begun}.`));
  const startTyping = useCallback(
    (way: readonly string[], value: unknown, begun?: string) =>
      setAt((at) => {
        const name = way.join('.');
        return typeof value === 'string' ? { ...at, typing: name } : { begun, left: withOne(at.left, name) };
      }),
    [],
  );
  const leave = useCallback(
    (way: string) =>
      setAt(({ typing, begun, left }) => ({
        typing: typing === way ? undefined : typing,
        begun: begun === way ? undefined : begun,
        left: withOne(left, way),
      })),
    [],
  );
  const settle = useCallback(() => setAt(NOWHERE), []);
  const before = onlyTyping && last.current[0] === line ? last.current[1] : undefined;
  return {
    result: read.ok ? read.value : before,
    problems: before ? [] : all,
    wrong: all.filter(
      ({ field, found }) => field !== typing && (found !== 'nothing' || left.includes(field)),
    ),
    ears: (typing ?? begun) ? 'figures' : left.length > 0 ? 'all' : 'nothing',
    waitingFor: before && all[0],
    typing: startTyping,
    leave,
    settle,
  };
}

/**
 * The entries of a form, what they work out to, and what is wrong with them. The first picture is always the example, as the page was
 * built; what was kept takes its place once the page runs.
 */
export function useEntries<T>(
  name: string,
  example: Entries,
  work: (entries: Entries) => Read<T>,
): EntriesState<T> {
  const [entries, setEntries] = useState<Entries>(example);
  // The entries that were brought last.
  const line = useRef<Entries>(example);
  // Two fields may change before the page is drawn again.
  const now = useRef<Entries>(example);
  const become = useCallback((next: Entries) => {
    now.current = next;
    setEntries(next);
  }, []);
  useEffect(() => {
    const look = (event?: Event) => {
      const found = event ? arrived(now.current !== example && now.current) : kept(name);
      if (!found) return;
      line.current = found;
      become(found);
    };
    look();
    addEventListener('hashchange', look);
    return () => removeEventListener('hashchange', look);
  }, [name, become]);
  const { typing, settle, ...worked } = useWorked(entries, work, line.current);
  const set = useCallback(
    (way: readonly string[], value: unknown, begun?: string) => {
      const next = withEntry(now.current, way, value);
      typing(way, value, begun);
      become(next);
      keep(name, next);
    },
    [name, typing, become],
  );
  return {
    ...worked,
    entries,
    set,
    reset: () => {
      forget(name);
      settle();
      become(example);
    },
  };
}
