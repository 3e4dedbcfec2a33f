import type { FieldProblem, Read } from '../calc/declare/read-fields.ts';
import { inflate } from './inflate.ts';
import { jobFile, LARGEST_JOB, type OpenedJob, openJobFile } from './job-file.ts';

/**
 * A whole job in the fragment of a link: `carried=1.d.<bytes>.<checksum>`. The version of the link, then how its bytes are packed (d: by
 * DEFLATE; p: plain), the bytes of a job file in base64url, and the CRC-32 of the job file. A fragment never reaches a host.
 */
const CARRIED = 'carried=';
const LINK_VERSION = 1;

/** The longest fragment that is read: a job of the largest size, four letters for three bytes, and what stands before and after it. */
const LONGEST = Math.ceil((LARGEST_JOB * 4) / 3) + 100;

/** Does a fragment carry a job? @example carriesJob('carried=1.p.e30.xxxx') // => true */
export const carriesJob = (fragment: string): boolean => fragment.startsWith(CARRIED);

/** The fragment that carries a job; packed where the browser can pack. */
export async function carry({ entries, ...head }: OpenedJob): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(jobFile(spoken(entries), head)));
  const packed = await deflate(bytes);
  const [kind, carried] = packed && packed.length < bytes.length ? ['d', packed] : ['p', bytes];
  return `${CARRIED}${LINK_VERSION}.${kind}.${base64url(carried as Uint8Array)}.${checksum(bytes)}`;
}

/**
 * The job that a fragment carries. Nothing in it is trusted: a link that was cut off, wrongly copied, packed too large or made by a newer copy is
 * refused in a sentence.
 * @example readCarried('carried=1.p.e30').ok // => false
 */
export function readCarried(fragment: string): Read<OpenedJob> {
  const refused = (found: string, expected: string): { ok: false; problems: FieldProblem[] } => ({
    ok: false,
    problems: [{ field: '', label: 'Link with a job', found, expected }],
  });
  if (fragment.length > LONGEST) return refused(`${fragment.length} characters`, `${LONGEST} at most`);
  const [version = '', kind = '', text = '', sum = '', ...more] = fragment.slice(CARRIED.length).split('.');
  if (!/^[1-9]\d{0,3}$/.test(version) || !carriesJob(fragment))
    return refused('a link of no known form', 'a link as this site makes it');
  if (Number(version) > LINK_VERSION)
    return refused(
      `version ${version}, made by a newer copy of this site`,
      `version ${LINK_VERSION}; update this copy first, then open the link again`,
    );
  if (!/^[0-9a-f]{8}$/.test(sum) || more.length > 0)
    return refused('a link that is cut off or wrongly copied', 'the whole link, to its last letter');
  const packed = fromBase64url(text);
  const bytes = packed && (kind === 'd' ? inflate(packed, LARGEST_JOB) : kind === 'p' ? packed : undefined);
  if (!bytes || checksum(bytes) !== sum)
    return refused(
      'letters that differ from those it was made with',
      'the whole link as it was made; ask for it again',
    );
  return openJobFile(new TextDecoder().decode(bytes));
}

/** Entries without those that say nothing. */
function spoken(entries: unknown): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(entries as object).flatMap(([key, value]: [string, unknown]) => {
      if (value === '' || value === null || value === undefined) return [];
      if (Array.isArray(value)) return value.length > 0 ? [[key, value.map(spoken)]] : [];
      if (typeof value !== 'object') return [[key, value]];
      const inside = spoken(value);
      return Object.keys(inside).length > 0 ? [[key, inside]] : [];
    }),
  );
}

/** Packs bytes where the browser can; undefined where it can't. */
async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array | undefined> {
  try {
    const packing = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
    return new Uint8Array(await new Response(packing).arrayBuffer());
  } catch {
    // No such stream, or not of this form: the link is longer, and as good.
    return undefined;
  }
}

function base64url(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

function fromBase64url(text: string): Uint8Array | undefined {
  if (!/^[A-Za-z0-9_-]+$/.test(text) || text.length % 4 === 1) return undefined;
  const letters = atob(text.replace(/-/g, '+').replace(/_/g, '/'));
  const bytes = new Uint8Array(letters.length);
  for (let at = 0; at < letters.length; at += 1) bytes[at] = letters.charCodeAt(at);
  return bytes;
}

/** The table of CRC-32, as ISO 3309 and gzip have it. */
const table = Uint32Array.from({ length: 256 }, (_, each) => {
  let sum = each;
  for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
  return sum;
});

/** The CRC-32 of some bytes in eight hexadecimal digits. @example checksum(new TextEncoder().encode('123456789')) // => 'cbf43926' */
export function checksum(bytes: Uint8Array): string {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (table[(sum ^ byte) & 0xff] ?? 0) ^ (sum >>> 8);
  return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
