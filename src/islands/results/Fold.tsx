import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** There is no document while pages are built, and nothing can be unfolded. */
export const isBuilding = import.meta.env.SSR;

/**
 * What is looked at now and then, under a line that unfolds it. The page is built with all of it, for a reader without script; where a
 * script runs, it is drawn only while it is unfolded, and what the page was built with goes: a long job has hundreds of workings, and none
 * is looked at while the page comes to life or an entry is typed.
 */
export function Fold({
  title,
  children,
}: {
  readonly title: ComponentChildren;
  readonly children: () => ComponentChildren;
}): JSX.Element {
  const box = useRef<HTMLDetailsElement>(null);
  const [drawn, setDrawn] = useState(isBuilding);
  useEffect(() => setDrawn(box.current?.open === true), []);
  return (
    <details ref={box} onToggle={({ currentTarget }) => setDrawn(currentTarget.open)}>
      <summary>{title}</summary>
      {drawn ? children() : null}
    </details>
  );
}
