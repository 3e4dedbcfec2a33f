import type { JSX } from 'preact';
import type { Answer, AnswerTable, Figure } from '../../calc/declare/calculation.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import type { Titled } from '../../quantity/working.ts';
import { theBook } from '../book.ts';
import type { DrawnAnswer } from '../calculator/drawn.ts';
import { cautionPage } from '../links.ts';
import { AnswerLine } from './AnswerLine.tsx';
import { Cautions } from './Caution.tsx';
import { FigureText } from './FigureText.tsx';
import { Fold, isBuilding } from './Fold.tsx';
import { Remarks } from './Remarks.tsx';
import { RowWorkings } from './RowWorkings.tsx';
import { RuleLinks } from './RuleLinks.tsx';
import { Workings } from './Working.tsx';
import { workedFigures } from './worked-figures.ts';

/** An answer with the drawings that belong beside it. */
export interface Shown {
  readonly answer: Answer;
  /** The rules that it asked for. */
  readonly asked: readonly string[];
  readonly drawings: readonly DrawnAnswer[];
}

/** A figure as it is printed, in a column that may be narrow. */
export const shown = ({ value, format: options }: Figure): string =>
  typeof value === 'string' ? value : unbroken(format(value, options));

/** Figures with their labels, in a list of them. */
export const Figures = ({ of }: { readonly of: readonly Figure[] }): JSX.Element => (
  <dl class="figures">
    {of.map((figure) => (
      <div key={figure.label}>
        <dt>{figure.label}</dt>
        <dd>
          <FigureText of={figure.value} text={shown(figure)} />
        </dd>
      </div>
    ))}
  </dl>
);

/** An answer in a line: its first figure. */
export function inALine({ figures }: Answer): string {
  const [first] = Object.values(figures);
  return first ? `${first.label}: ${shown(first)}` : '';
}

/** A table of more columns than these may have to scroll in its own box, by keys too. */
const MOST_IN_SIGHT = 5;

export const columnsOf = (columns: number): { class: string; tabIndex?: number } =>
  columns > MOST_IN_SIGHT ? { class: 'cards many', tabIndex: 0 } : { class: 'cards' };

/** A table of the answer; on a phone each row becomes a card. */
export function TableView({ title, columns, rows, format: options }: AnswerTable): JSX.Element {
  const { cautions } = theBook();
  const [first, ...rest] = Object.keys(columns);
  const cell = (row: AnswerTable['rows'][number], column: string) => {
    const value = row[column] ?? '';
    if (typeof value === 'string') return value;
    return 'caution' in value ? (
      <a href={cautionPage(value.caution)}>{cautions[value.caution]?.from}</a>
    ) : (
      <FigureText of={value} text={unbroken(format(value, options?.[column]))} />
    );
  };
  return (
    <table {...columnsOf(1 + rest.length)}>
      <caption>{title}</caption>
      <thead>
        <tr>
          {Object.entries(columns).map(([name, label]) => (
            <th key={name} scope="col">
              {label}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, place) => (
          <tr key={place}>
            <th scope="row">{first ? cell(row, first) : null}</th>
            {rest.map((column) => (
              <td key={column} data-label={columns[column]}>
                {cell(row, column)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** One answer: what stops it, the answer itself, its figures, drawings and tables, and how each was worked out. */
export function AnswerView({
  name,
  answer: { figures, tables = {}, cautions, remarks },
  asked,
  drawings,
  said = [],
  within = 'page',
  workedElsewhere = false,
}: Shown & {
  readonly name: string;
  /** Cautions that stand on the sheet already; a stop is told at every answer that it stops. */
  readonly said?: readonly CautionId[];
  /** What the answer is a part of: its headings lie one below. */
  readonly within?: 'page' | 'section';
  /** A page of its own works the example out for readers without script: the answer's own page is built without that. */
  readonly workedElsewhere?: boolean;
}): JSX.Element {
  const { cautions: allCautions } = theBook();
  const [first, ...rest] = Object.entries(figures);
  const level = (id: CautionId) => allCautions[id]?.level ?? 'note';
  const at = (wanted: 'stop' | 'warn' | 'note') =>
    cautions.filter((id) => level(id) === wanted && (wanted === 'stop' || !said.includes(id)));
  const worked = workedFigures({ figures });
  const Heading = within === 'page' ? 'h2' : 'h3';
  return (
    <>
      <Cautions ids={at('stop')} />
      {first ? <AnswerLine of={first[1].label} words={shown(first[1])} /> : null}
      <Figures of={rest.map(([, figure]) => figure)} />
      <Remarks of={remarks} />
      <Cautions ids={at('warn')} />
      {drawings.map(({ View, ...each }, place) => (
        <View key={each.wide.title} name={`${name}-${place + 1}`} {...each} />
      ))}
      {Object.entries(tables).map(([key, table]) => (
        <TableView key={key} {...table} />
      ))}
      <Cautions ids={at('note')} />
      {isBuilding && workedElsewhere ? null : (
        <>
          {worked.length > 0 ? <Heading class="screen-only">How it is worked out</Heading> : null}
          <HowWorkedOut worked={worked} tables={tables} asked={asked} />
        </>
      )}
    </>
  );
}

/** How each figure and each row of an answer was worked out, and the values behind it, all of it folded. */
const HowWorkedOut = ({
  worked,
  tables,
  asked,
}: {
  readonly worked: readonly Titled[];
  readonly tables: Readonly<Record<string, AnswerTable>>;
  readonly asked: readonly string[];
}): JSX.Element => (
  <>
    <Workings of={worked} />
    {Object.entries(tables).map(([key, table]) => (
      <RowWorkings key={key} {...table} />
    ))}
    {asked.length > 0 ? (
      <Fold title={`Values of the rulebook behind this answer: ${asked.length}`}>
        {() => <RuleLinks ids={asked} />}
      </Fold>
    ) : null}
  </>
);
