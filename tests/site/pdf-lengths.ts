import { inflateSync } from 'node:zlib';

/** A page of a printed document: its size, and how long every straight stroke and edge of a rectangle on it is, in points of 1/72 in. */
export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly across: readonly number[];
  readonly up: readonly number[];
}

type Matrix = readonly [number, number, number, number, number, number];
const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[1] * n[2],
  m[0] * n[1] + m[1] * n[3],
  m[2] * n[0] + m[3] * n[2],
  m[2] * n[1] + m[3] * n[3],
  m[4] * n[0] + m[5] * n[2] + n[4],
  m[4] * n[1] + m[5] * n[3] + n[5],
];
const PLAIN: Matrix = [1, 0, 0, 1, 0, 0];

/** Every page's own drawing, as the browser wrote it: text that says what is drawn where. */
function contents(pdf: Buffer): { readonly box: readonly number[]; readonly text: string }[] {
  const raw = pdf.toString('latin1');
  const object = (number: string): string =>
    new RegExp(`(?:^|\\s)${number} 0 obj([\\s\\S]*?)endobj`).exec(raw)?.[1] ?? '';
  return [...raw.matchAll(/\/Type\s*\/Page\b([\s\S]*?)endobj/g)].map(([whole]) => {
    const box = (/\/MediaBox\s*\[([^\]]*)\]/.exec(whole)?.[1] ?? '').trim().split(/\s+/).map(Number);
    const content = object(/\/Contents\s+(\d+) 0 R/.exec(whole)?.[1] ?? '');
    const start = content.indexOf('stream') + 'stream'.length;
    const stream = content.slice(start, content.lastIndexOf('endstream')).replace(/^\r?\n/, '');
    return { box, text: inflateSync(Buffer.from(stream, 'latin1')).toString('latin1') };
  });
}

/** How long is what is printed? Follows the places and scales of the page's drawing down to each stroke. */
export const printedPages = (pdf: Buffer): PrintedPage[] =>
  contents(pdf).map(({ box, text }) => {
    const across: number[] = [];
    const up: number[] = [];
    let matrix = PLAIN;
    const kept: Matrix[] = [];
    let numbers: number[] = [];
    let from: readonly [number, number] | undefined;
    const place = (x: number, y: number): readonly [number, number] => [
      x * matrix[0] + y * matrix[2] + matrix[4],
      x * matrix[1] + y * matrix[3] + matrix[5],
    ];
    const stroke = (a: readonly [number, number], b: readonly [number, number]): void => {
      const [dx, dy] = [Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1])];
      if (dy < 0.01) across.push(dx);
      if (dx < 0.01) up.push(dy);
    };
    for (const token of text.split(/\s+/)) {
      const number = Number(token);
      if (token !== '' && !Number.isNaN(number)) {
        numbers.push(number);
        continue;
      }
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
      if (token === 'q') kept.push(matrix);
      else if (token === 'Q') matrix = kept.pop() ?? PLAIN;
      else if (token === 'cm') matrix = times([a, b, c, d, e, f], matrix);
      else if (token === 'm') from = place(a, b);
      else if (token === 'l') {
        const to = place(a, b);
        if (from) stroke(from, to);
        from = to;
      } else if (token === 're') {
        stroke(place(a, b), place(a + c, b));
        stroke(place(a, b), place(a, b + d));
      }
      numbers = [];
    }
    return { width: box[2] ?? 0, height: box[3] ?? 0, across, up };
  });
