import { isUnitName, units } from '../quantity/units.ts';
import { placeholdersIn } from './placeholders.ts';
import type { RulebookData, RuleForCalculation } from './rulebook.ts';
import type { RuleValue } from './schema.ts';

const HEADER = '// Written by "npm run generate" from the files in rules/. Not to be edited.\n';

const dimensionOf = (unit: string): string => (isUnitName(unit) ? units[unit].dimension : 'number');

const quoted = (text: string): string => JSON.stringify(text);

function typeOf(value: RuleValue): string {
  switch (value.kind) {
    case 'one-of':
      return `{ kind: 'one-of'; choices: ${value.choices.map(quoted).join(' | ')} }`;
    case 'table': {
      const columns = value.columns.map(
        ({ name, unit }) => `${quoted(name)}: ${unit === undefined ? "'word'" : quoted(dimensionOf(unit))}`,
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

/** The part of the rulebook that calculations ask for, small enough to send to every phone. */
export function calculationRulesModule(data: RulebookData, named: (id: string) => boolean): string {
  const inCautions = new Set(
    Object.values(data.cautions).flatMap(({ says, do: act }) =>
      placeholdersIn(`${says} ${act}`).map(({ rule }) => rule),
    ),
  );
  const rules: Record<string, RuleForCalculation> = {};
  for (const { id, title, symbol, value } of Object.values(data.rules)) {
    if (!named(id) && !inCautions.has(id)) continue;
    const bare =
      value.kind === 'exact' ? { kind: value.kind, number: value.number, unit: value.unit } : value;
    rules[id] = { title, ...(symbol === undefined ? {} : { symbol }), value: bare as RuleValue };
  }
  const cautions = Object.fromEntries(
    Object.values(data.cautions).map(({ id, level, says, do: act, beside }) => [
      id,
      { level, says, do: act, ...(beside ? { beside } : {}) },
    ]),
  );
  const text = JSON.stringify({ version: data.version, rules, cautions });
  return `${HEADER}import type { CautionWords, RuleForCalculation } from '../rulebook/rulebook.ts';\n\nexport const calculationRules: {\n  readonly version: string;\n  readonly rules: Readonly<Record<string, RuleForCalculation>>;\n  readonly cautions: Readonly<Record<string, CautionWords>>;\n} = ${text};\n`;
}
