import { gzipSync } from 'node:zlib';

/** Files of words, which get smaller; search's other files and pictures of dots are small already. */
const WORDS = /\.(html|css|js|json|svg|csv|txt|webmanifest|yaml|conf|sh|pf_fragment)$/;

/** A smaller file than this goes in one packet as it is. */
const LEAST = 1000;

/** What stands beside a file for servers that send it ready made; undefined for one that would not get smaller. */
export function gzipOf(file: string, bytes: Uint8Array): Uint8Array | undefined {
  if (!WORDS.test(file) || bytes.length < LEAST) return undefined;
  // Its head holds neither name nor day, so the same file makes the same bytes.
  const made = gzipSync(bytes, { level: 9 });
  return made.length < bytes.length ? made : undefined;
}
