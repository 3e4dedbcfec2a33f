/** A parcel as it came: what the host said with it, and what each of its files holds, in their order. */
export interface Opened {
  readonly headers: Headers;
  readonly contents: readonly Uint8Array<ArrayBuffer>[];
}

/**
 * Fetches a parcel; undefined where the host does not give it, or gives something else. Nothing is lost then: its files can be asked for one by
 * one. Where the network goes away it fails, as they would.
 */
export async function openParcel(address: string, many: number): Promise<Opened | undefined> {
  const answer = await fetch(address, { cache: 'no-cache', credentials: 'same-origin' });
  const read = answer.ok ? parsed(await answer.text()) : undefined;
  if (!Array.isArray(read) || read.length !== many) return undefined;
  const contents = read.map(bytesOf);
  return contents.every((each) => each !== undefined) ? { headers: answer.headers, contents } : undefined;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Words stand as they are, all else in base 64. */
function bytesOf(content: unknown): Uint8Array<ArrayBuffer> | undefined {
  if (typeof content === 'string') return new TextEncoder().encode(content);
  const { base64 } = (content ?? {}) as { readonly base64?: unknown };
  return typeof base64 === 'string' ? Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0)) : undefined;
}
