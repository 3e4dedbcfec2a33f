import { type FieldProblem, type Read, shown } from '../calc/declare/read-fields.ts';

/** A file or a kept text, parsed: its version and whatever else it holds. */
export type Versioned = Readonly<Record<string, unknown>>;

/** One step: what a file of a version becomes in the next. Pure, and for ever: a step is never changed once files went through it. */
export type MigrationStep = (file: Versioned) => Versioned;

/** The steps of the job file, each under the version that it starts from. */
export const jobSteps: Readonly<Record<number, MigrationStep>> = {
  // Version 2 may bear, in its head, the id of the job and when it was last changed; version 1 knew neither.
  1: (file) => ({ ...file, version: 2 }),
  // Version 3 says which entries came with the example job; of an older one that is not known, and what is the example’s to the letter is taken to be.
  2: (file) => ({ ...file, version: 3 }),
};

/**
 * Brings a file of an older version up to the present one, step by step. A newer one is refused: this copy can't know what it means.
 * @example migrate({ version: 1 }, { now: 3, steps: jobSteps, label: 'Job file' }) // => { ok: true, value: { version: 3 } }
 */
export function migrate(
  file: Versioned,
  {
    now,
    steps,
    label,
  }: {
    readonly now: number;
    readonly steps: Readonly<Record<number, MigrationStep>>;
    readonly label: string;
  },
): Read<Versioned> {
  const { version } = file;
  const refused = (found: string, expected: string): { ok: false; problems: FieldProblem[] } => ({
    ok: false,
    problems: [{ field: 'version', label, found, expected }],
  });
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refused(`version ${shown(version)}`, `a version from 1 to ${now}`);
  if (version > now)
    return refused(
      `version ${version}, made by a newer copy of this site`,
      `version ${now} or older; update this copy first, then open it again`,
    );
  let at = file;
  for (let from = version; from < now; from += 1) {
    const step = steps[from];
    if (!step) return refused(`version ${from}`, `a version from which a step leads on to ${from + 1}`);
    at = step(at);
  }
  return { ok: true, value: at };
}
