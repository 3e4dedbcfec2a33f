import { delimiter } from 'node:path';

/** Marks that part folders on another system, or in a list: `;` is that of Windows and `:` of all others, where it is no drive's. */
const PARTS = /[;,]|:(?![\\/])/;

/**
 * What is said more of a folder that is not there, whose name looks like several? How they are parted here.
 * @example ifSeveral('../state;../county', ':') // => '; several folders are parted by ":", as in ../state:../county'
 * @example ifSeveral('../our-notes', ':') // => ''
 */
export const ifSeveral = (folder: string, parted: string = delimiter): string =>
  PARTS.test(folder)
    ? `; several folders are parted by "${parted}", as in ${folder
        .split(PARTS)
        .map((each) => each.trim())
        .join(parted)}`
    : '';
