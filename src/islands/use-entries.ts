import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Entries } from '../calc/declare/entries.ts';
import { withEntry } from '../calc/declare/entries.ts';
import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import { arrived, forget, keep, kept } from './keeping.ts';

/** What entries work out to, and what is wrong with them. */
export interface Worked<T> {
  /** The newest result that could be worked out, if any ever could. */
  readonly result: T | undefined;
  /** Problems of fields that were left; a field still being typed in is not told off. */
  readonly problems: readonly FieldProblem[];
  /** The result is of earlier entries, since a field is still being typed in. */
  readonly waitingFor: FieldProblem | undefined;
  /** Says which entry is being changed. */
  readonly typing: (way: readonly string[], value: unknown) => void;
  readonly leave: (way: string) => void;
  /** Nothing is being typed in. */
  readonly settle: () => void;
}

export interface EntriesState<T> extends Omit<Worked<T>, 'typing' | 'settle'> {
  readonly entries: Entries;
  readonly set: (way: readonly string[], value: unknown) => void;
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
  const [typing, setTyping] = useState<string | undefined>();
  // Not a state: to keep it draws nothing anew.
  const last = useRef<readonly [line?: unknown, result?: T]>([]);
  const read = useMemo(() => work(entries), [entries, work]);
  useEffect(() => {
    if (read.ok) last.current = [line, read.value];
  }, [read, line]);
  const all = read.ok ? [] : read.problems;
  const onlyTyping = typing !== undefined && all.every(({ field }) => field === typing);
  const startTyping = useCallback(
    (way: readonly string[], value: unknown) =>
      setTyping(typeof value === 'string' ? way.join('.') : undefined),
    [],
  );
  const leave = useCallback((way: string) => setTyping((now) => (now === way ? undefined : now)), []);
  const settle = useCallback(() => setTyping(undefined), []);
  const before = onlyTyping && last.current[0] === line ? last.current[1] : undefined;
  return {
    result: read.ok ? read.value : before,
    problems: before ? [] : all,
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
    (way: readonly string[], value: unknown) => {
      const next = withEntry(now.current, way, value);
      typing(way, value);
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
