import { calculationNamed, calculations } from '../calc/calculations.ts';
import { type AnyCalculation, answer } from '../calc/declare/calculation.ts';
import type { Field, Fields } from '../calc/declare/field.ts';
import { guessed } from '../calc/declare/guess.ts';
import { sentence } from '../calc/declare/read-fields.ts';
import { remarkText } from '../calc/declare/remark.ts';
import { nearest } from '../rulebook/nearest.ts';
import { loadProject } from '../rulebook/project.ts';
import { openRulebook } from '../rulebook/rulebook.ts';
import { cautionsJson, figuresJson, tablesJson, whoseJson } from './figures-json.ts';
import { stopIfRecalled } from './recalled.ts';
import { InputError, notAsked, run } from './run.ts';

const COMMAND = {
  name: 'npm run --silent calc',
  does: 'Works one calculation, its example where no field is given, and prints figures and working as JSON.',
  given: 'NAME field=value ...',
  options: { list: { does: 'names the calculations, each with its fields', alone: true } },
} as const;

await run(COMMAND, (given) => {
  const [name, ...pairs] = given.words;
  if (given.has('list')) {
    console.log(calculations.map(listed).join('\n\n'));
    return 0;
  }
  if (name === undefined) throw notAsked(COMMAND, given);
  const declared = calculationNamed(name);
  if (!declared) {
    const guess = nearest(
      name,
      calculations.map((each) => each.name),
    );
    throw new InputError(
      `found no calculation "${name}", expected ${guess ? `"${guess}"` : 'one that --list names'}`,
    );
  }
  const entered = pairs.length === 0 ? declared.example : entriesFrom(pairs, declared.fields);
  const { data, files } = loadProject();
  stopIfRecalled(files.recalls, data.version);
  const rules = openRulebook(data);
  const read = answer(declared, entered, rules);
  if (!read.ok) throw new InputError(read.problems.map(guessed).map(sentence).join('\n'));
  const { figures, tables, cautions, remarks } = read.value;
  console.log(
    JSON.stringify(
      {
        calculation: name,
        rulebook: data.version,
        given: entered,
        figures: figuresJson(figures),
        ...whoseJson(figuresJson(figures), rules),
        ...(tables ? { tables: tablesJson(tables) } : {}),
        cautions: cautionsJson(cautions, data.cautions, rules),
        remarks: remarks.map(remarkText),
      },
      null,
      2,
    ),
  );
  return 0;
});

function listed({ name, question, fields }: AnyCalculation): string {
  const lines = Object.entries(fields as Fields).map(
    ([field, it]) => `  ${field}${it.optional ? ' (optional)' : ''}: ${it.label}. ${exampleOf(it)}`,
  );
  return [`${name}: ${question}`, ...lines].join('\n');
}

function exampleOf(field: Field): string {
  switch (field.kind) {
    case 'choice':
      return `One of: ${field.choices.join('; ')}.`;
    case 'list':
      return `A list in JSON of ${Object.keys(field.of).join(', ')}.`;
    case 'group':
      return `A set in JSON of ${Object.keys(field.of).join(', ')}.`;
    default:
      return `Such as ${field.example}.`;
  }
}

function entriesFrom(pairs: readonly string[], fields: Fields): Record<string, unknown> {
  const given = new Set<string>();
  return Object.fromEntries(
    pairs.map((pair) => {
      const at = pair.indexOf('=');
      if (at < 1) throw new InputError(`found "${pair}", expected field=value`);
      const [field, value] = [pair.slice(0, at), pair.slice(at + 1)];
      if (given.has(field)) throw new InputError(`${field}: found it given twice, expected it once`);
      given.add(field);
      return [field, fields[field]?.kind === 'list' ? jsonOf(field, value) : value];
    }),
  );
}

function jsonOf(field: string, value: string): unknown {
  try {
    return JSON.parse(value);
  } catch {
    throw new InputError(
      `${field}: found "${value}", expected a list in JSON, such as [{"at": "8 ft 2 in"}]`,
    );
  }
}
