import type { JSX } from 'preact';
import { useCallback } from 'preact/hooks';
import { calculationNamed } from '../../calc/calculations.ts';
import { type AnyCalculation, answer } from '../../calc/declare/calculation.ts';
import { type Read, readFields } from '../../calc/declare/read-fields.ts';
import type { Entries } from '../entries.ts';
import { FieldsForm } from '../form/FieldInput.tsx';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { AnswerView, inALine, type Shown } from '../results/AnswerView.tsx';
import { ShortAnswer } from '../results/ShortAnswer.tsx';
import { rules, watched } from '../rules.ts';
import { useEntries } from '../use-entries.ts';
import { drawingsFor } from './drawings.ts';

function worked(declared: AnyCalculation, entries: Entries): Read<Shown> {
  const { result: found, asked } = watched((rules) => answer(declared, entries, rules));
  if (!found.ok) return found;
  const read = readFields(declared.fields, entries);
  if (!read.ok) return read;
  return {
    ok: true,
    value: { answer: found.value, asked, drawings: drawingsFor(declared.name, read.value, rules) },
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
      {state.result && state.problems.length === 0 ? (
        <ShortAnswer words={inALine(state.result.answer)} to="answer" />
      ) : null}
      <section class="answers" id="answer" tabIndex={-1} aria-label="Answer" aria-live="polite">
        {state.problems.length > 0 ? <ProblemSummary problems={state.problems} /> : null}
        {state.waitingFor ? (
          <p class="waiting">Figures of before: waiting for {state.waitingFor.label}.</p>
        ) : null}
        {state.result ? <AnswerView name={declared.name} {...state.result} /> : null}
      </section>
    </div>
  );
}
