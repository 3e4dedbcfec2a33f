/**
 * Is a file of the copy asked for by itself, before the parcels? Pages that hold their style lead to others that fetch it, and these may be
 * opened before the copy is whole.
 */
export const isFirst = (file: string): boolean => file.endsWith('.css');
