/** Of how the answer came, or of what came: none of it holds for what is kept. */
const OF_THE_WAY = ['content-encoding', 'content-length', 'transfer-encoding', 'vary'];
/** What a host says of the one file that it sends. */
const OF_THE_FILE = ['etag', 'last-modified', 'content-disposition', 'content-location', 'accept-ranges'];

/** What a host sent, with what it said of it, but for what held of the way here only. */
export function asKept(bytes: Uint8Array<ArrayBuffer>, said: Headers): Response {
  const headers = new Headers(said);
  for (const name of OF_THE_WAY) headers.delete(name);
  return new Response(bytes, { headers });
}

/** A file out of a parcel: what the host says with every answer, such as its policy, holds for it too. */
export function asKeptOf(parcel: Headers, bytes: Uint8Array<ArrayBuffer>, type: string): Response {
  const headers = new Headers(parcel);
  for (const name of OF_THE_FILE) headers.delete(name);
  headers.set('content-type', type);
  return asKept(bytes, headers);
}

/** The first sixteen signs of the SHA-256: enough to tell one state of a file from another. */
export async function sumOf(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...sum.slice(0, 8)].map((each) => each.toString(16).padStart(2, '0')).join('');
}
