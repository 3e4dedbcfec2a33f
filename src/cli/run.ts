import { parseArgs } from 'node:util';
import { ParseError } from '../quantity/parse.ts';
import { nearest } from '../rulebook/nearest.ts';
import { DataError } from '../rulebook/problem.ts';
import { mayCloseEarly } from './closed-pipe.ts';

/** Bad input ends a command with this exit code; a check that fails ends it with 1. */
export const BAD_INPUT = 2;

/** A mistake in what a command was given: said in a sentence, without a stack trace. */
export class InputError extends Error {
  override name = 'InputError';
}

/** An option of a command. */
interface Option {
  /** The word for what it takes; left out where it takes nothing. */
  readonly takes?: string;
  readonly does: string;
  /** It stands in the place of the words that the command is else given. */
  readonly alone?: true;
}

/** What a command says of itself, and what it may be given. */
export interface Command {
  /** How it is called: "npm run --silent calc". */
  readonly name: string;
  /** What it does, in one sentence. */
  readonly does: string;
  /** What it may be given besides options, as "NAME [field=value ...]"; nothing where this is left out. */
  readonly given?: string;
  /** Its options, by their names without hyphens. */
  readonly options?: Readonly<Record<string, Option>>;
}

/** What a command was given, its options read. */
export interface Given {
  /** All but the options, in order. */
  readonly words: readonly string[];
  readonly has: (option: string) => boolean;
  readonly valueOf: (option: string) => string | undefined;
}

const written = ([name, { takes }]: [string, Option]): string =>
  `--${name}${takes === undefined ? '' : ` ${takes}`}`;

/**
 * A command as it is written.
 * @example howTo({ name: 'npm start', does: 'Serves the site.', options: { port: { takes: 'NUMBER', does: 'where' } } }) // => 'npm start [-- [--port NUMBER]]'
 */
export function howTo({ name, given, options = {} }: Command): string {
  const entries = Object.entries(options);
  const together = [given, ...entries.filter(([, { alone }]) => !alone).map((each) => `[${written(each)}]`)];
  const ways = [
    together.filter(Boolean).join(' '),
    ...entries.filter(([, { alone }]) => alone).map(written),
  ].filter(Boolean);
  if (ways.length === 0) return name;
  const needed = given !== undefined && !given.startsWith('[');
  return needed ? `${name} -- ${ways.join(' | ')}` : `${name} [-- ${ways.join(' | ')}]`;
}

function helpOf(command: Command): string {
  const options: [string, Option][] = [
    ...Object.entries(command.options ?? {}),
    ['help', { does: 'says this' }],
  ];
  const wide = Math.max(...options.map((each) => written(each).length));
  return [
    command.does,
    '',
    `  ${howTo(command)}`,
    '',
    ...options.map((each) => `  ${written(each).padEnd(wide)}   ${each[1].does}`),
  ].join('\n');
}

/** Reads what a command is given. @throws InputError for an option that it does not know, or words where it takes none. */
function read(command: Command, args: readonly string[]): Given & { readonly help: boolean } {
  const { options = {}, given } = command;
  const { tokens, positionals } = parseArgs({
    args: [...args],
    options: Object.fromEntries(
      Object.entries(options).map(([name, { takes }]) => [
        name,
        { type: takes ? 'string' : 'boolean' } as const,
      ]),
    ),
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const known = [...Object.keys(options), 'help'];
  const values = new Map<string, string | undefined>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const { name, rawName, inlineValue } = token;
    // The reader takes the next option for the value of one that was left without.
    const value = inlineValue === false && token.value.startsWith('--') ? undefined : token.value;
    if (!known.includes(name) || !rawName.startsWith('--')) {
      const guess = nearest(name, known);
      throw new InputError(
        `found the option ${rawName}, expected ${known.map((each) => `--${each}`).join(', ')}${guess ? `; did you mean --${guess}?` : ''}`,
      );
    }
    const takes = options[name]?.takes;
    if ((takes === undefined) !== (value === undefined))
      throw new InputError(
        takes === undefined
          ? `found ${rawName} with "${value}", expected ${rawName} alone`
          : `found ${rawName} alone, expected ${rawName} ${takes}`,
      );
    values.set(name, value);
  }
  const lone = [...values.keys()].find((name) => options[name]?.alone);
  if (lone !== undefined && positionals.length > 0 && !values.has('help'))
    throw new InputError(`found --${lone} with "${positionals.join(' ')}", expected --${lone} alone`);
  if (given === undefined && positionals.length > 0 && !values.has('help'))
    throw new InputError(`found "${positionals.join(' ')}", expected ${howTo(command)}`);
  return {
    words: positionals,
    has: (option) => values.has(option),
    valueOf: (option) => values.get(option),
    help: values.has('help'),
  };
}

/**
 * Runs a command: its result is its exit code, whether or not anybody reads to the end. Asked with --help it says what it does and takes. A mistake in data or input is told plainly;
 * anything else is a fault of ours and keeps its stack.
 */
export async function run(
  command: Command,
  work: (given: Given) => number | undefined | Promise<number | undefined>,
): Promise<void> {
  mayCloseEarly(process.stdout, process.stderr);
  try {
    const given = read(command, process.argv.slice(2));
    if (given.help) console.log(helpOf(command));
    else process.exitCode = (await work(given)) ?? 0;
  } catch (error) {
    if (!(error instanceof DataError || error instanceof InputError || error instanceof ParseError))
      throw error;
    console.error(error.message);
    process.exitCode = error instanceof DataError ? 1 : BAD_INPUT;
  }
}

/** The mistake of being given what a command does not take. */
export const notAsked = (command: Command, { words }: Given): InputError =>
  new InputError(
    `found ${words.length > 0 ? `"${words.join(' ')}"` : 'nothing'}, expected ${howTo(command)}`,
  );
