import { type ExternalOption, type OutputOptions, type RolldownOutput, rolldown } from 'rolldown';
import { buildTargets } from './oldest-browsers.ts';

/** How scripts are bundled. */
export interface Bundling {
  /** What stays apart, and is imported as before. */
  readonly external?: ExternalOption;
  /** How what comes out is written. */
  readonly output: OutputOptions;
}

/** Some scripts with all that they import, without what they do not use of it, made small, in words that the oldest browsers know. */
export async function bundled(
  input: string | Record<string, string>,
  { external, output }: Bundling,
): Promise<RolldownOutput['output']> {
  const bundle = await rolldown({
    input,
    transform: { target: buildTargets() },
    ...(external === undefined ? {} : { external }),
  });
  try {
    return (await bundle.generate({ minify: true, ...output })).output;
  } finally {
    await bundle.close();
  }
}
