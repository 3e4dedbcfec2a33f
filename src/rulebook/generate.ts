import { isUnitName, units } from '../quantity/units.ts';
import { placeholdersIn } from './placeholders.ts';
import type { RulebookData, RuleForCalculation } from './rulebook.ts';
import type { RuleValue } from './schema.ts';
import { noteLine, ruleLine, sourceInBrief, statusOf } from './status.ts';
import { valueHeadline } from './value-text.ts';

const HEADER = '// Written by "npm run generate" from the files in rules/. Not to be edited.\n';

const dimensionOf = (unit: string): string => (isUnitName(unit) ? units[unit].dimension : 'number');

const quoted = (text: string): string => JSON.stringify(text);

function typeOf(value: RuleValue): string {
  switch (value.kind) {
    case 'one-of':
      return `{ kind: 'one-of'; choices: ${value.choices.map(quoted).join(' | ')} }`;
    case 'table': {
      const columns = value.columns.map(
        ({ name, unit, words }) =>
          `${quoted(name)}: ${unit === undefined ? "'word'" : words ? `{ of: ${quoted(dimensionOf(unit))}; or: ${words.map(quoted).join(' | ')} }` : quoted(dimensionOf(unit))}`,
      );
      const keys = value.columns.filter(({ key }) => key !== undefined).map(({ name }) => quoted(name));
      return `{ kind: 'table'; columns: { ${columns.join('; ')} }; keys: ${keys.join(' | ') || 'never'} }`;
    }
    default:
      return `{ kind: ${quoted(value.kind)}; dimension: ${quoted(dimensionOf(value.unit))} }`;
  }
}

/** The TypeScript that makes a wrong id, or a value asked for in the wrong way, a type error. */
export function ruleTypesModule(data: RulebookData): string {
  const rules = Object.values(data.rules).map(
    ({ id, title, value }) => `  /** ${title.replaceAll('*/', '')} */\n  ${quoted(id)}: ${typeOf(value)};`,
  );
  const cautions = Object.keys(data.cautions).map(quoted);
  return `${HEADER}export interface RuleTypes {\n${rules.join('\n')}\n}\n\nexport type CautionId =\n  | ${cautions.join('\n  | ')};\n`;
}

/** The words of every one-of rule as literals, so that a form offers them and their type follows from the rulebook. */
export function ruleChoicesModule(data: RulebookData): string {
  const rules = Object.values(data.rules).flatMap(({ id, title, value }) =>
    value.kind === 'one-of'
      ? [
          `  /** ${title.replaceAll('*/', '')} */\n  ${quoted(id)}: [${value.choices.map(quoted).join(', ')}],`,
        ]
      : [],
  );
  return `${HEADER}export const ruleChoices = {\n${rules.join('\n')}\n} as const;\n`;
}

/** The cautions asked for, and the rules: those asked for, and those whose values stand in the cautions. */
function shown(data: RulebookData, named: (id: string) => boolean) {
  const cautions = Object.values(data.cautions).filter(({ id }) => named(id));
  const inCautions = new Set(
    cautions.flatMap(({ says, do: act }) => placeholdersIn(`${says} ${act}`).map(({ rule }) => rule)),
  );
  return { cautions, rules: Object.values(data.rules).filter(({ id }) => named(id) || inCautions.has(id)) };
}

/** A part of the rulebook for a browser: the rules and cautions asked for, and the rules whose values stand in those cautions. */
export function sentRules(data: RulebookData, named: (id: string) => boolean) {
  const { cautions, rules: all } = shown(data, named);
  const rules: Record<string, RuleForCalculation> = {};
  for (const { id, title, symbol, value, by } of all) {
    const bare =
      value.kind === 'exact' ? { kind: value.kind, number: value.number, unit: value.unit } : value;
    rules[id] = {
      title,
      ...(symbol === undefined ? {} : { symbol }),
      value: bare as RuleValue,
      ...(by === undefined ? {} : { by }),
    };
  }
  return {
    version: data.version,
    rules,
    cautions: Object.fromEntries(
      cautions.map(({ id, level, says, do: act, source, beside }) => [
        id,
        {
          level,
          says,
          do: act,
          from: sourceInBrief(source, data.documents),
          ...(beside ? { beside } : {}),
        },
      ]),
    ),
  };
}

/** The part of the rulebook that a job can ask for, small enough to send to every phone. */
export const calculationRulesModule = (data: RulebookData, named: (id: string) => boolean): string =>
  `${HEADER}import type { SentRules } from '../rulebook/rulebook.ts';\n\nexport const calculationRules: SentRules = ${JSON.stringify(sentRules(data, named))};\n`;

/** What a sheet on paper tells at its end of each rule that may stand on it, in a caution too: its value, and where that is from. */
export function ruleNotesModule(data: RulebookData, named: (id: string) => boolean): string {
  const titleOf = (id: string): string => data.rules[id]?.title ?? id;
  const notes = shown(data, named).rules.map((rule) => {
    const status = rule.source.kind === 'document' ? `${statusOf(rule.source)}, ` : '';
    const whence = ruleLine(rule, (source) => noteLine(source, data.documents, titleOf));
    return [rule.id, [valueHeadline(rule.value), status + whence]];
  });
  return `${HEADER}export const ruleNotes: Readonly<Record<string, readonly [value: string, whence: string]>> = ${JSON.stringify(Object.fromEntries(notes))};\n`;
}

/** Where a calculation is declared, and under which name. */
export interface DeclaredAt {
  readonly file: string;
  readonly as: string;
}

/** One calculation with the part of the rulebook that its code names: all that its page sends. Files are given from the root of the project. */
export function calculatorModule(
  data: RulebookData,
  { file, as }: DeclaredAt,
  drawing: string | undefined,
  named: (id: string) => boolean,
): string {
  const drawn = drawing
    ? `export { drawing } from ${quoted(`../../../${drawing}`)};`
    : 'export const drawing = undefined;';
  return `${HEADER}import type { SentRules } from ${quoted('../../rulebook/rulebook.ts')};\n\nexport { ${as} as calculation } from ${quoted(`../../../${file}`)};\n${drawn}\nexport const sent: SentRules = ${JSON.stringify(sentRules(data, named))};\n`;
}

/**
 * The script of one calculation's page, which asks for its own module and no other: a page that chose from a table of all modules carried the
 * table, 900 bytes packed.
 */
export const calculatorScript = (name: string): string =>
  `---
// Written by "npm run generate" from the list of calculations. Not to be edited.
---
<script>
  import { mount } from ${quoted('../../islands/calculator/mount.tsx')};
  import { calculation, drawing, sent } from ${quoted(`./${name}.ts`)};
  mount({ calculation, drawing, sent });
</script>
`;

/** The list of photographs as a module, for the sheets of a job. */
export const photographsModule = (listed: readonly object[]): string =>
  `// Written by "npm run generate" from content/en/photographs.yaml. Not to be edited.\nexport const photographs = ${JSON.stringify(listed, null, 2)} as const;\n`;
