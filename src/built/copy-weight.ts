import { gzipSync } from 'node:zlib';
import type { CopyList } from './copy-list.ts';
import { firstOf, type Parcel, parcelsOf } from './parcels.ts';

/** What a first visit may cost a phone, packed, in bytes: a few seconds on a fair connection. */
export const MOST_PACKED = 3_000_000;

export interface CopyWeight {
  /** On the way to a phone, packed as hosts do, in bytes. */
  readonly total: number;
  /** How often the phone asks. */
  readonly requests: number;
  /** What it is for, by folder, the costliest first: each packed by itself, so they come to a little more or less than the whole. */
  readonly parts: readonly (readonly [part: string, bytes: number])[];
}

const packed = (data: Uint8Array | string): number => gzipSync(data, { level: 9 }).length;

const packedAll = (all: readonly (Uint8Array | string)[]): number =>
  all.reduce((sum, each) => sum + packed(each), 0);

/** What does a first copy cost on the way? Its parcels, and what is asked for before them. */
export function copyWeight(
  site: ReadonlyMap<string, Uint8Array>,
  list: CopyList,
  parcels: readonly Parcel[],
): CopyWeight {
  const first = firstOf(list);
  const folders = new Map<string, string[]>();
  for (const file of Object.keys(list.files)) {
    const folder = file.includes('/') ? (file.split('/')[0] ?? file) : 'front page and marks';
    folders.set(folder, [...(folders.get(folder) ?? []), file]);
  }
  const weightOfPart = (files: readonly string[]): number =>
    packedAll(
      parcelsOf(site, { files: Object.fromEntries(files.map((file) => [file, ''])) }).map(({ text }) => text),
    );
  return {
    total: packedAll(parcels.map(({ text }) => text)) + packedAll(first.map((file) => site.get(file) ?? '')),
    requests: parcels.length + first.length,
    parts: [...folders]
      .map(([part, files]) => [part, weightOfPart(files)] as const)
      .sort(([, a], [, b]) => b - a),
  };
}
