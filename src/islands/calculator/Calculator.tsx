import type { JSX } from 'preact';
import { useCallback } from 'preact/hooks';
import { type AnyCalculation, answer } from '../../calc/declare/calculation.ts';
import type { Entries } from '../../calc/declare/entries.ts';
import { type Read, readFields } from '../../calc/declare/read-fields.ts';
import { type Book, WithBook } from '../book.ts';
import { FieldsForm } from '../form/FieldInput.tsx';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { AnswerView, inALine, type Shown } from '../results/AnswerView.tsx';
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

/** One calculation: its form, its answer, its working. Made from the declaration alone. */
export function Calculator({ calculation, book, drawing }: CalculatorProps): JSX.Element {
  const work = useCallback(
    (entries: Entries): Read<Shown> => worked({ calculation, book, drawing }, entries),
    [calculation, book, drawing],
  );
  const state = useEntries<Shown>(`heel-to-ridge ${calculation.name}`, calculation.example, work);
  return (
    <WithBook value={book}>
      <div class="bench">
        <form class="entries" aria-label={calculation.title} onSubmit={(event) => event.preventDefault()}>
          <FieldsForm
            fields={calculation.fields}
            entries={state.entries}
            set={state.set}
            leave={state.leave}
            problems={state.problems}
          />
          <button type="button" class="plain" onClick={state.reset}>
            Back to the example
          </button>
        </form>
        {state.result && state.problems.length === 0 ? (
          <ShortAnswer words={inALine(state.result.answer)} old={state.waitingFor} to="answer" />
        ) : null}
        <section class="answers" id="answer" tabIndex={-1} aria-label="Answer" aria-live="polite">
          {state.problems.length > 0 ? <ProblemSummary problems={state.problems} /> : null}
          {state.waitingFor ? (
            <p class="waiting">Figures of before: waiting for {state.waitingFor.label}.</p>
          ) : null}
          {state.result ? <AnswerView name={calculation.name} {...state.result} /> : null}
        </section>
      </div>
    </WithBook>
  );
}
