import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { readLayer } from '../rulebook/local/read.ts';
import { agencySchema } from '../rulebook/local/schema.ts';
import { newFolder } from '../rulebook/local/template.ts';
import { loadProject, today, withLocal } from '../rulebook/project.ts';
import { asWord, folderMeant, startWith } from './local-ways.ts';
import { type Given, InputError, run } from './run.ts';

const questions = {
  name: 'The full name of your agency?',
  short: 'Its name in short, as it stands at the head of every page?',
  id: 'A short name in small letters, such as harrow-valley?',
  contact: 'How is it reached?',
  area: 'Which area does it serve?',
  answers: 'Who answers questions about your notes?',
  folder: 'In which folder are the notes to lie?',
} as const;
type Asked = keyof typeof questions;

const COMMAND = {
  name: 'npm run local:new',
  does: 'Writes a folder for an agency’s own notes, and asks for each answer that no option gives.',
  options: Object.fromEntries(
    Object.entries(questions).map(([name, question]) => [name, { takes: 'WORDS', does: question }]),
  ),
};

/** Why can an answer not be taken? Undefined where it can. */
function wrongWith(name: Asked, answer: string): string | undefined {
  if (name === 'folder') {
    if (answer === '') return 'found no folder, expected one, such as ../our-notes';
    return existsSync(folderMeant(answer))
      ? `found "${answer}" there already, expected a folder that is new`
      : undefined;
  }
  const read = agencySchema.shape[name].safeParse(answer);
  if (read.success) return undefined;
  return answer === ''
    ? 'found no answer, expected words'
    : `found "${answer}", expected ${read.error.issues[0]?.message}`;
}

/** What the options give; the rest is asked for, one question a line, and once more where the answer can't be taken. */
async function answered(given: Given): Promise<Record<Asked, string>> {
  const answers: Partial<Record<Asked, string>> = {};
  const missing = (Object.keys(questions) as Asked[]).filter((name) => {
    const answer = given.valueOf(name);
    if (answer !== undefined) answers[name] = answer;
    return answer === undefined;
  });
  if (missing.length > 0) {
    const asking = createInterface({ input: process.stdin });
    const lines = asking[Symbol.asyncIterator]();
    for (const name of missing) {
      let wrong: string | undefined;
      do {
        process.stdout.write(`${questions[name]} `);
        const { value, done } = await lines.next();
        // Where what is typed ends before the last question, the rest counts as not answered.
        answers[name] = done ? '' : value.trim();
        wrong = done ? undefined : wrongWith(name, answers[name] ?? '');
        if (wrong !== undefined) console.log(`${wrong}. Once more.`);
      } while (wrong !== undefined);
    }
    asking.close();
  }
  return answers as Record<Asked, string>;
}

await run(COMMAND, async (given) => {
  const { folder: typed, ...answers } = await answered(given);
  const wrong = wrongWith('folder', typed);
  if (wrong !== undefined) throw new InputError(wrong);
  const folder = folderMeant(typed);
  const { base, releases } = loadProject('let pass', []);
  const read = agencySchema.safeParse({ ...answers, version: today(), based_on: base.version });
  if (!read.success) {
    const told = read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
    throw new InputError(
      `found answers that can not be taken: ${told.join('; ')}; expected words for each question`,
    );
  }
  const files = newFolder(read.data, readFileSync('src/rulebook/local/schema.ts', 'utf8'));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  withLocal(base, releases, [folder]);
  console.log(
    `${Object.keys(files).length} files are in ${folder}${readLayer(folder).pages.length > 0 ? ', with a page to begin with' : ''}.`,
  );
  console.log(`\nThis says what is wrong in them:\n\n  npm run --silent local:check ${asWord(folder)}`);
  console.log(`\nThis builds the site with them:\n\n  ${startWith(folder).join('\n  ')}`);
  return 0;
});
