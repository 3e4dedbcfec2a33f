import type { JSX } from 'preact';
import { useCallback } from 'preact/hooks';
import { calculationNamed } from '../../calc/calculations.ts';
import {
  type Answer,
  type AnswerTable,
  type AnyCalculation,
  answer,
  type Figure,
} from '../../calc/declare/calculation.ts';
import { type Read, readFields } from '../../calc/declare/read-fields.ts';
import { rulePage } from '../../components/links.ts';
import { format } from '../../quantity/format.ts';
import type { Entries } from '../entries.ts';
import { FieldsForm } from '../form/FieldInput.tsx';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { Cautions } from '../results/Caution.tsx';
import { Sheet } from '../results/Sheet.tsx';
import { Working } from '../results/Working.tsx';
import { cautions as allCautions, rules } from '../rules.ts';
import { useEntries } from '../use-entries.ts';
import { type DrawnAnswer, drawingsFor } from './drawings.ts';

/** An answer with the drawings that belong beside it. */
interface Shown {
  readonly answer: Answer;
  readonly drawings: readonly DrawnAnswer[];
}

function worked(declared: AnyCalculation, entries: Entries): Read<Shown> {
  const found = answer(declared, entries, rules);
  if (!found.ok) return found;
  const read = readFields(declared.fields, entries);
  if (!read.ok) return read;
  return {
    ok: true,
    value: { answer: found.value, drawings: drawingsFor(declared.name, read.value, rules) },
  };
}

/** One calculation: its form, its answer, its working. Made from the declaration alone. */
export function Calculator({ name }: { readonly name: string }): JSX.Element | null {
  const declared = calculationNamed(name);
  const work = useCallback(
    (entries: Entries): Read<Shown> => (declared ? worked(declared, entries) : { ok: false, problems: [] }),
    [declared],
  );
  const state = useEntries<Shown>(`heel-to-ridge ${name}`, declared?.example ?? {}, work);
  if (!declared) return null;
  return (
    <div class="bench">
      <form class="entries" aria-label={declared.title} onSubmit={(event) => event.preventDefault()}>
        <FieldsForm
          fields={declared.fields}
          entries={state.entries}
          set={state.set}
          leave={state.leave}
          problems={state.problems}
        />
        <button type="button" class="plain" onClick={state.reset}>
          Back to the example
        </button>
      </form>
      <section class="answers" aria-label="Answer" aria-live="polite">
        {state.problems.length > 0 ? <ProblemSummary problems={state.problems} /> : null}
        {state.waitingFor ? (
          <p class="waiting">Figures of before: waiting for {state.waitingFor.label}.</p>
        ) : null}
        {state.result ? <AnswerView name={declared.name} {...state.result} /> : null}
      </section>
    </div>
  );
}

const shown = ({ value, format: options }: Figure): string =>
  typeof value === 'string' ? value : format(value, options);

/** A figure that is a rule's own value leads to the rule. */
const FigureText = (figure: Figure): JSX.Element | string =>
  typeof figure.value !== 'string' && figure.value.origin.from === 'rule' ? (
    <a class="rule" href={rulePage(figure.value.origin.rule)}>
      {shown(figure)}
    </a>
  ) : (
    shown(figure)
  );

/** A table of the answer; on a phone each row becomes a card. */
function TableView({ title, columns, rows, format: options }: AnswerTable): JSX.Element {
  const [first, ...rest] = Object.keys(columns);
  const cell = (row: AnswerTable['rows'][number], column: string) => {
    const value = row[column] ?? '';
    return typeof value === 'string' ? (
      value
    ) : (
      <FigureText label="" value={value} {...(options?.[column] ? { format: options[column] } : {})} />
    );
  };
  return (
    <table class="cards">
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

function AnswerView({
  name,
  answer: { figures, tables = {}, cautions, remarks },
  drawings,
}: Shown & { readonly name: string }): JSX.Element {
  const [first, ...rest] = Object.entries(figures);
  // What stops the work stands before any figure; the rest beside what it concerns.
  const stops = cautions.filter((id) => allCautions[id]?.level === 'stop');
  return (
    <>
      <Cautions ids={stops} />
      {first ? (
        <p class="answer">
          <span class="label">{first[1].label}</span> <output>{shown(first[1])}</output>
        </p>
      ) : null}
      <dl class="figures">
        {rest.map(([name, figure]) => (
          <div key={name}>
            <dt>{figure.label}</dt>
            <dd>
              <FigureText {...figure} />
            </dd>
          </div>
        ))}
      </dl>
      {remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
      <Cautions ids={cautions.filter((id) => !stops.includes(id))} />
      {drawings.map((each, place) => (
        <Sheet key={each.wide.title} name={`${name}-${place + 1}`} {...each} />
      ))}
      {Object.entries(tables).map(([key, table]) => (
        <TableView key={key} {...table} />
      ))}
      <h2>How it is worked out</h2>
      {Object.entries(figures).map(([key, { label, value, format: options }]) =>
        typeof value === 'string' || value.origin.from === 'input' || value.origin.from === 'rule' ? null : (
          <details key={key}>
            <summary>{label}</summary>
            <Working of={value} {...(options ? { options } : {})} />
          </details>
        ),
      )}
    </>
  );
}
