import type { JSX } from 'preact';

/** What one code of the largest size holds, in bytes at its lowest correction (ISO/IEC 18004, version 40-L). */
export const MOST_IN_ONE_CODE = 2953;

/** The width of the empty edge that readers need, in modules (ISO/IEC 18004). */
const QUIET = 4;

/** The dark modules of a code as one path, row by row. */
const pathOf = (rows: readonly (readonly boolean[])[]): string =>
  rows.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : ''))).join('');

/** The modules of a code for a text; asked for only when one is drawn. */
export async function codeOf(text: string): Promise<boolean[][]> {
  const { encodeQR } = await import('qr');
  return encodeQR(text, 'raw', { ecc: 'low', encoding: 'byte', border: QUIET });
}

/** A QR code, dark on white in every scheme, since readers need it so. */
export const QrCode = ({
  rows,
  label,
}: {
  readonly rows: readonly (readonly boolean[])[];
  readonly label: string;
}): JSX.Element => (
  <svg
    class="qr"
    role="img"
    aria-label={label}
    viewBox={`0 0 ${rows.length} ${rows.length}`}
    shape-rendering="crispEdges"
  >
    <rect width="100%" height="100%" fill="#fff" />
    <path d={pathOf(rows)} fill="#000" />
  </svg>
);
