import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Read, sentence } from '../../calc/declare/read-fields.ts';
import { calculationRules } from '../../generated/calculation-rules.ts';
import { type DifferingFigure, noRuleNamed, type Rechecked, recheck, sideText } from '../../job/recheck.ts';
import { readRecord } from '../../job/record.ts';
import { valuesApart } from '../../rulebook/values-apart.ts';
import { textOf } from '../blob.ts';
import { WithBook } from '../book.ts';
import { cautionPage, rulePage } from '../links.ts';
import { Cautions } from '../results/Caution.tsx';
import { book, cautions, rules } from '../rules.ts';

function checked(text: string): Read<Rechecked> {
  const record = readRecord(text);
  return record.ok ? recheck(record.value, rules, calculationRules.rules) : record;
}

/** Works a saved record again: drop its file, or choose it. Nothing leaves the phone. */
export function RecheckView(): JSX.Element {
  const [found, setFound] = useState<Read<Rechecked> | undefined>();
  const open = async (file: File | undefined) => {
    if (file) setFound(checked(await textOf(file)));
  };
  return (
    <fieldset
      class="drop"
      aria-label="A saved record"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        open(event.dataTransfer?.files[0]);
      }}
    >
      <p>
        <label class="button" for="open-record">
          Choose a record, or drop it here
        </label>
        <input
          id="open-record"
          type="file"
          accept="application/json,.json"
          class="visually-hidden"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            event.currentTarget.value = '';
            open(file);
          }}
        />
      </p>
      <div role="status">
        {found ? (
          <WithBook value={book}>
            <Outcome found={found} />
          </WithBook>
        ) : null}
      </div>
    </fieldset>
  );
}

function Outcome({ found }: { readonly found: Read<Rechecked> }): JSX.Element {
  if (!found.ok)
    return (
      <>
        <p>The record is not worked again.</p>
        <ul>
          {found.problems.map((problem) => (
            <li key={problem.field + problem.found}>{sentence(problem)}</li>
          ))}
        </ul>
      </>
    );
  const { from, to, figures, differing, changed, cautions: standing } = found.value;
  return (
    <>
      <p class="answer">
        <span class="label">
          Recorded under rulebook {from}, worked again under {to}
        </span>{' '}
        <output>
          {differing.length === 0
            ? 'Every figure comes out the same'
            : `${differing.length} of ${figures} figures differ`}
        </output>
      </p>
      <p>{changed.length} of the rules behind its figures changed since.</p>
      {differing.length > 0 ? (
        <table class="cards">
          <thead>
            <tr>
              <th scope="col">Figure</th>
              <th scope="col">Recorded</th>
              <th scope="col">Now</th>
              <th scope="col">Because of</th>
            </tr>
          </thead>
          <tbody>
            {differing.map((figure) => (
              <tr key={figure.name}>
                <th scope="row">{figure.label}</th>
                <td data-label="Recorded">{sideText(figure.before, figure.stops)}</td>
                <td data-label="Now">{sideText(figure.after, figure.stops)}</td>
                <td data-label="Because of">
                  <Because figure={figure} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      <Cautions ids={standing} />
    </>
  );
}

/** The stops that hold a figure back, and each rule behind it that changed. */
function Because({ figure }: { readonly figure: DifferingFigure }): JSX.Element {
  const { stops, because } = figure;
  if (stops.length === 0 && because.length === 0) return <>{noRuleNamed(figure)}</>;
  return (
    <>
      {stops.map((id) => (
        <span class="each" key={id}>
          {id in cautions ? <a href={cautionPage(id)}>the stop {id}</a> : `the stop ${id}`}
        </span>
      ))}
      {because.map((each) => (
        <span class="each" key={each.rule}>
          <a href={rulePage(each.rule)}>{each.rule}</a>: {valuesApart(each.before, each.after).join(', now ')}
        </span>
      ))}
    </>
  );
}
