import { QuantityError } from '../quantity/quantity.ts';
import { DataError } from '../rulebook/problem.ts';

/** Bad input ends a command with this exit code; a check that fails ends it with 1. */
export const BAD_INPUT = 2;

/** A mistake in what a command was given: said in a sentence, without a stack trace. */
export class InputError extends Error {
  override name = 'InputError';
}

/**
 * Runs a command: its result is its exit code. A mistake in data or input is told plainly; anything else is a fault of ours
 * and keeps its stack.
 */
export async function run(command: () => number | undefined | Promise<number | undefined>): Promise<void> {
  try {
    process.exitCode = (await command()) ?? 0;
  } catch (error) {
    if (!(error instanceof DataError || error instanceof InputError || error instanceof QuantityError))
      throw error;
    console.error(error.message);
    process.exitCode = error instanceof DataError ? 1 : BAD_INPUT;
  }
}
