import { type ExternalOption, type OutputOptions, type RolldownOutput, rolldown } from 'rolldown';

/** How scripts are bundled. */
export interface Bundling {
  /** The browsers whose words they are written in, as the build names them. */
  readonly target: string | readonly string[];
  /** What stays apart, and is imported as before. */
  readonly external?: ExternalOption;
  /** How what comes out is written. */
  readonly output: OutputOptions;
}

/** Some scripts with all that they import, without what they do not use of it, made small. */
export async function bundled(
  input: string | Record<string, string>,
  { target, external, output }: Bundling,
): Promise<RolldownOutput['output']> {
  const bundle = await rolldown({
    input,
    transform: { target: [target].flat() },
    ...(external === undefined ? {} : { external }),
  });
  try {
    return (await bundle.generate({ minify: true, ...output })).output;
  } finally {
    await bundle.close();
  }
}
