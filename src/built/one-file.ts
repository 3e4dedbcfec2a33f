import { type ExternalOption, rolldown } from 'rolldown';

/** How a script and all that it imports are written into one file. */
export interface OneFile {
  /** The browsers whose words it is written in, as the build names them. */
  readonly target: string | readonly string[];
  /** A module of a page, or a script for itself. */
  readonly format: 'esm' | 'iife';
  /** What stays apart, and is imported as before. */
  readonly external?: ExternalOption;
  /** Put before all else. */
  readonly banner?: string;
}

/** The code of a script with that of all that it imports, without what it does not use of them, made small. */
export async function oneFile(input: string, { target, external, ...output }: OneFile): Promise<string> {
  const bundle = await rolldown({
    input,
    transform: { target: [target].flat() },
    ...(external === undefined ? {} : { external }),
  });
  try {
    const { output: files } = await bundle.generate({ ...output, minify: true, codeSplitting: false });
    return files[0].code;
  } finally {
    await bundle.close();
  }
}
