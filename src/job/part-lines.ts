import { type AnswerTable, cellValue, type Figure } from '../calc/declare/calculation.ts';
import { sentence } from '../calc/declare/read-fields.ts';
import { remarkPieces } from '../calc/declare/remark.ts';
import { format } from '../quantity/format.ts';
import type { CautionWords, Rulebook } from '../rulebook/rulebook.ts';
import { figureText, sentenceOf } from '../rulebook/whose.ts';
import { cautionSentence } from './caution-sentence.ts';
import type { PartOutcome } from './parts/part.ts';

type Cautions = Readonly<Record<string, CautionWords>>;

/** One part of a job as lines of plain text: its stops, its figures, its tables; or what it waits for. */
export function partLines(outcome: PartOutcome, cautions: Cautions, rules: Rulebook): string[] {
  const heading = ['', outcome.title.toUpperCase()];
  switch (outcome.state) {
    case 'nothing':
      return [...heading, `  ${outcome.why}`];
    case 'held':
      return [];
    case 'waiting':
      return [...heading, `  Waits for: ${outcome.wanted.map(({ label }) => label).join(', ')}.`];
    case 'wrong':
      return [...heading, `  ${sentence(outcome.problem)}`];
    case 'answered': {
      const { figures, tables = {}, cautions: ids, remarks } = outcome.answer;
      const stops = ids.filter((id) => cautions[id]?.level === 'stop');
      const said = (which: typeof ids) => which.map((id) => cautionSentence(cautions[id], rules));
      return [
        ...heading,
        ...said(stops),
        ...Object.values(figures).map((figure) => `  ${figure.label}: ${shown(figure, rules)}`),
        ...Object.values(tables).flatMap((table) => tableLines(table, rules)),
        ...remarks.map((remark) => `  ${sentenceOf(remarkPieces(remark), rules)}`),
        ...said(ids.filter((id) => !stops.includes(id))),
      ];
    }
  }
}

const shown = ({ value, format: options }: Pick<Figure, 'value' | 'format'>, rules: Rulebook): string =>
  typeof value === 'string' ? value : figureText(value, format(value, options), rules);

/** A table, its columns as wide as their widest cell. */
function tableLines({ title, columns, rows, format: options }: AnswerTable, rules: Rulebook): string[] {
  const names = Object.keys(columns);
  const cells = rows.map((row) =>
    names.map((name) => {
      const how = options?.[name];
      return shown({ value: cellValue(row[name] ?? ''), ...(how ? { format: how } : {}) }, rules);
    }),
  );
  const all = [names.map((name) => columns[name] ?? ''), ...cells];
  const widths = names.map((_, place) => Math.max(...all.map((line) => (line[place] ?? '').length)));
  return [
    `  ${title}`,
    ...all.map((line) =>
      `    ${line.map((cell, place) => cell.padEnd(widths[place] ?? 0)).join('  ')}`.trimEnd(),
    ),
  ];
}
