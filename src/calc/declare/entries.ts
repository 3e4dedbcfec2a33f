/** Entries as a form holds them: texts, in groups and lists. */
export type Entries = { readonly [key: string]: unknown };

/** Whatever stands at a way. @example entryAt({ roof: { seams: [{ at: '4 ft' }] } }, ['roof', 'seams', '0', 'at']) // => '4 ft' */
export const entryAt = (entries: Entries, way: readonly string[]): unknown =>
  way.reduce<unknown>((each, key) => (each as Record<string, unknown> | null | undefined)?.[key], entries);

/** The entry at a way such as `roof.obstacles.1.along`; an empty text where there is none. @example textAt({}, ['width']) // => '' */
export const textAt = (entries: Entries, way: readonly string[]): string => {
  const found = entryAt(entries, way);
  return found === undefined || found === null || typeof found === 'object' ? '' : String(found);
};

/** The list at a way; empty where there is none. @example listAt({ points: [{}] }, ['points']) // => [{}] */
export const listAt = (entries: Entries, way: readonly string[]): readonly Entries[] => {
  const found = entryAt(entries, way);
  return Array.isArray(found) ? found : [];
};

/**
 * The entries with one of them changed; nothing else is touched. An empty way changes them all.
 * @example withEntry({ lights: [{ side: 'back' }] }, ['lights', '0', 'side'], 'front') // => { lights: [{ side: 'front' }] }
 */
export function withEntry(entries: unknown, way: readonly string[], value: unknown): Entries {
  const [key, ...rest] = way;
  if (key === undefined) return value as Entries;
  const inside = (entries ?? {}) as Record<string, unknown>;
  const next = rest.length === 0 ? value : withEntry(inside[key], rest, value);
  if (Array.isArray(entries))
    return entries.map((each, place) => (String(place) === key ? next : each)) as unknown as Entries;
  return { ...inside, [key]: next };
}
