import type { JSX } from 'preact';
import { useCallback, useState } from 'preact/hooks';
import { type AnyCalculation, answer } from '../../calc/declare/calculation.ts';
import type { Entries } from '../../calc/declare/entries.ts';
import { type Read, readFields } from '../../calc/declare/read-fields.ts';
import { plain } from '../../job/caution-words.ts';
import { type Book, WithBook } from '../book.ts';
import { FieldsForm, ofEveryBox } from '../form/FieldInput.tsx';
import { problemsInShort } from '../form/in-short.ts';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { AnswerView, inALine, type Shown } from '../results/AnswerView.tsx';
import { aloud, Said } from '../results/Said.tsx';
import { ShortAnswer } from '../results/ShortAnswer.tsx';
import { useEntries } from '../use-entries.ts';
import type { Drawn } from './drawn.ts';

/** All that one calculator needs: its calculation, what that can ask of the rulebook, and how it is drawn, if it is. */
export interface CalculatorProps {
  readonly calculation: AnyCalculation;
  readonly book: Book;
  readonly drawing: Drawn | undefined;
}

function worked(
  { calculation: declared, book: { rules, watched }, drawing }: CalculatorProps,
  entries: Entries,
): Read<Shown> {
  const { result: found, asked } = watched((rules) => answer(declared, entries, rules));
  if (!found.ok) return found;
  const read = readFields(declared.fields, entries);
  if (!read.ok) return read;
  return {
    ok: true,
    value: { answer: found.value, asked, drawings: drawing?.draw(read.value, rules) ?? [] },
  };
}

/** The stops of an answer, said after its first figure. */
const stopsAloud = (of: Shown | undefined, { cautions, rules }: Book): string =>
  (of?.answer.cautions ?? [])
    .flatMap((id) => {
      const caution = cautions[id];
      return caution?.level === 'stop' ? [`. Stop. ${plain(caution.says, rules)}`] : [];
    })
    .join('');

/** One calculation: its form, its answer, its working. Made from the declaration alone. */
export function Calculator({ calculation, book, drawing }: CalculatorProps): JSX.Element {
  const work = useCallback(
    (entries: Entries): Read<Shown> => worked({ calculation, book, drawing }, entries),
    [calculation, book, drawing],
  );
  const state = useEntries<Shown>(`heel-to-ridge ${calculation.name}`, calculation.example, work);
  const { entries, result, problems } = state;
  // What was typed before the example took its place.
  const [before, hold] = useState(entries);
  const inShort = result && problems.length === 0 ? inALine(result.answer) : undefined;
  return (
    <WithBook value={book}>
      <div class="bench">
        <form
          class="entries"
          aria-label={calculation.title}
          {...ofEveryBox}
          onSubmit={(event) => event.preventDefault()}
        >
          <FieldsForm
            fields={calculation.fields}
            entries={entries}
            set={state.set}
            leave={state.leave}
            problems={state.wrong}
          />
          <p>
            <button
              type="button"
              class="plain"
              onClick={() => {
                hold(entries);
                state.reset();
              }}
            >
              Back to the example
            </button>
          </p>
          {before !== entries && entries === calculation.example ? (
            <button type="button" onClick={() => state.set([], before)}>
              Undo: back to what was typed
            </button>
          ) : null}
        </form>
        {inShort ? <ShortAnswer words={inShort} old={state.waitingFor} to="answer" /> : null}
        <Said
          words={aloud(state, inShort && inShort + stopsAloud(result, book), problemsInShort(problems))}
        />
        <section class="answers" id="answer" tabIndex={-1} aria-label="Answer">
          {problems.length > 0 ? <ProblemSummary problems={problems} /> : null}
          {state.waitingFor ? (
            <p class="waiting">Figures of before: waiting for {state.waitingFor.label}.</p>
          ) : null}
          {result ? <AnswerView name={calculation.name} {...result} workedElsewhere /> : null}
        </section>
      </div>
    </WithBook>
  );
}
