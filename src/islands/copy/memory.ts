/** What this phone remembers of the copy. What the browser does not take holds while the page is open, before what it took earlier. */
export interface Memory {
  /** What the host last said of recalled versions: the text of its file. */
  recall: string | undefined;
  /** When the host last answered, as 2026-11-26T14:05:00.000Z. */
  checked: string | undefined;
  /** The reader cleared the copy, and wants none. */
  declined: string | undefined;
}

/** The memory of the copy of a site. Several sites may stand on one host, each with its own. */
export function memoryOf(root: string): Memory {
  const place = (name: string): string => `heel-to-ridge ${new URL(root).pathname} ${name}`;
  const held = new Map<string, string | undefined>();
  const entry = (name: string) => ({
    get: (): string | undefined => {
      try {
        if (!held.has(name)) return localStorage.getItem(place(name)) ?? undefined;
      } catch {
        // A store that is refused holds nothing.
      }
      return held.get(name);
    },
    set: (text: string | undefined): void => {
      try {
        if (text === undefined) localStorage.removeItem(place(name));
        else localStorage.setItem(place(name), text);
        held.delete(name);
      } catch {
        held.set(name, text);
      }
    },
  });
  return Object.defineProperties(
    {},
    { recall: entry('recall'), checked: entry('checked'), declined: entry('declined') },
  ) as Memory;
}
