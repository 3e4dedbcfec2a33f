/**
 * Unpacks what was packed by DEFLATE (RFC 1951), so that a packed link opens also where the browser can't unpack one. Small and strict: a
 * text that is no such stream, or that would grow beyond what is allowed, gives undefined; nothing is thrown, nothing runs on.
 */

const LONGEST_CODE = 15;
/** RFC 1951, 3.2.5: the first length and the extra bits of the codes from 257. */
const LENGTHS = [
  3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195,
  227, 258,
];
const LENGTH_BITS = [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];
/** The first distance and the extra bits of each distance code. */
const DISTANCES = [
  1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097,
  6145, 8193, 12289, 16385, 24577,
];
const DISTANCE_BITS = [
  0, 0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9, 10, 10, 11, 11, 12, 12, 13, 13,
];
/** 3.2.7: the order in which the lengths of the codes for code lengths are written. */
const ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

/** The stream is none, or too large. */
class NoStream extends Error {}

/** A Huffman code: how many codes there are of each length, and the symbols in the order of their codes. */
interface Code {
  readonly count: readonly number[];
  readonly symbol: readonly number[];
}

function codeOf(lengths: readonly number[]): Code {
  const count = new Array<number>(LONGEST_CODE + 1).fill(0);
  for (const length of lengths) count[length] = (count[length] ?? 0) + 1;
  let left = 1;
  for (let length = 1; length <= LONGEST_CODE; length += 1) {
    left = left * 2 - (count[length] ?? 0);
    if (left < 0) throw new NoStream('more codes than there is room for');
  }
  const symbol = lengths
    .map((length, each) => ({ length, each }))
    .filter(({ length }) => length > 0)
    .sort((a, b) => a.length - b.length || a.each - b.each)
    .map(({ each }) => each);
  return { count, symbol };
}

const fixedLengths = codeOf(
  Array.from({ length: 288 }, (_, each) => (each < 144 ? 8 : each < 256 ? 9 : each < 280 ? 7 : 8)),
);
const fixedDistances = codeOf(new Array<number>(30).fill(5));

class Bits {
  readonly #bytes: Uint8Array;
  #at = 0;
  #held = 0;
  #count = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  take(wanted: number): number {
    while (this.#count < wanted) {
      const byte = this.#bytes[this.#at];
      if (byte === undefined) throw new NoStream('the end before its end');
      this.#at += 1;
      this.#held |= byte << this.#count;
      this.#count += 8;
    }
    const taken = this.#held & ((1 << wanted) - 1);
    this.#held >>>= wanted;
    this.#count -= wanted;
    return taken;
  }

  symbol({ count, symbol }: Code): number {
    let code = 0;
    let first = 0;
    let index = 0;
    for (let length = 1; length <= LONGEST_CODE; length += 1) {
      code |= this.take(1);
      const here = count[length] ?? 0;
      if (code - here < first) return symbol[index + code - first] as number;
      index += here;
      first = (first + here) << 1;
      code <<= 1;
    }
    throw new NoStream('a code that stands for nothing');
  }

  /** Drops what is left of a byte. */
  toByte(): void {
    this.#held = 0;
    this.#count = 0;
  }
}

/**
 * The bytes that were packed; undefined for what is no such stream, or would be more than `most` bytes.
 * @example inflate(Uint8Array.of(0x03, 0x00), 10)?.length // => 0
 */
export function inflate(packed: Uint8Array, most: number): Uint8Array | undefined {
  try {
    return unpacked(new Bits(packed), most);
  } catch (error) {
    if (error instanceof NoStream) return undefined;
    throw error;
  }
}

function unpacked(bits: Bits, most: number): Uint8Array {
  const out: number[] = [];
  const put = (byte: number) => {
    if (out.length >= most) throw new NoStream('more than is allowed');
    out.push(byte);
  };
  for (let last = 0; last === 0; ) {
    last = bits.take(1);
    const kind = bits.take(2);
    if (kind === 0) stored(bits, put);
    else if (kind === 1) coded(bits, out, put, fixedLengths, fixedDistances);
    else if (kind === 2) coded(bits, out, put, ...ownCodes(bits));
    else throw new NoStream('a block of no kind');
  }
  return Uint8Array.from(out);
}

function stored(bits: Bits, put: (byte: number) => void): void {
  bits.toByte();
  const length = bits.take(8) | (bits.take(8) << 8);
  const inverse = bits.take(8) | (bits.take(8) << 8);
  if (length !== (~inverse & 0xffff)) throw new NoStream('a length that is not its own');
  for (let byte = 0; byte < length; byte += 1) put(bits.take(8));
}

function coded(
  bits: Bits,
  out: readonly number[],
  put: (byte: number) => void,
  lengths: Code,
  distances: Code,
): void {
  for (;;) {
    const symbol = bits.symbol(lengths);
    if (symbol === 256) return;
    if (symbol < 256) {
      put(symbol);
      continue;
    }
    const length = (LENGTHS[symbol - 257] ?? 0) + bits.take(LENGTH_BITS[symbol - 257] ?? 0);
    const far = bits.symbol(distances);
    const distance = (DISTANCES[far] ?? 0) + bits.take(DISTANCE_BITS[far] ?? 0);
    if (length === 0 || distance === 0 || distance > out.length)
      throw new NoStream('a copy of what is not there');
    for (let byte = 0; byte < length; byte += 1) put(out[out.length - distance] as number);
  }
}

function ownCodes(bits: Bits): [Code, Code] {
  const lengths = bits.take(5) + 257;
  const distances = bits.take(5) + 1;
  const written = bits.take(4) + 4;
  if (lengths > 286 || distances > 30) throw new NoStream('more codes than there are');
  const ofLengths = new Array<number>(19).fill(0);
  for (const place of ORDER.slice(0, written)) ofLengths[place] = bits.take(3);
  const code = codeOf(ofLengths);
  const all: number[] = [];
  while (all.length < lengths + distances) {
    const symbol = bits.symbol(code);
    if (symbol < 16) {
      all.push(symbol);
      continue;
    }
    const again = symbol === 16 ? all[all.length - 1] : 0;
    if (again === undefined) throw new NoStream('a repeat of nothing');
    const times = symbol === 16 ? 3 + bits.take(2) : symbol === 17 ? 3 + bits.take(3) : 11 + bits.take(7);
    if (all.length + times > lengths + distances) throw new NoStream('a repeat beyond the end');
    for (let time = 0; time < times; time += 1) all.push(again);
  }
  return [codeOf(all.slice(0, lengths)), codeOf(all.slice(lengths))];
}
