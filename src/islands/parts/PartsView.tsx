import { Fragment, type JSX } from 'preact';
import type { CautionId } from '../../generated/rule-types.ts';
import type { AnyPart, PartOutcome } from '../../job/parts/part.ts';
import { workPart } from '../../job/parts/part.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { type FindElsewhere, WayTo, wayBy } from '../form/WayTo.tsx';
import { AnswerView } from '../results/AnswerView.tsx';
import { Later } from '../results/Later.tsx';
import { rules, watched } from '../rules.ts';
import { drawingsOfPart } from './drawings.ts';

/** Some parts of the job, each with its answer, or with what it waits for. */
export function PartsView({
  parts,
  plan,
  elsewhere,
}: {
  readonly parts: readonly AnyPart[];
  readonly plan: WorkedJob;
  readonly elsewhere: FindElsewhere;
}): JSX.Element {
  const outcomes = parts.flatMap((each) => {
    const { result, asked } = watched((rules) => workPart(each, plan, rules));
    return result.map((outcome) => ({ outcome, asked }));
  });
  return (
    <>
      {outcomes.map(({ outcome, asked }, place) => {
        const view = () => (
          <PartView
            outcome={outcome}
            asked={asked}
            said={cautionsOf(outcomes.slice(0, place).map((each) => each.outcome))}
            elsewhere={elsewhere}
          />
        );
        // The first is the answer of its sheet; the others follow it.
        return place === 0 ? (
          <Fragment key={outcome.title}>{view()}</Fragment>
        ) : (
          <Later key={outcome.title} of={outcome}>
            {view}
          </Later>
        );
      })}
    </>
  );
}

const cautionsOf = (outcomes: readonly PartOutcome[]): CautionId[] =>
  outcomes.flatMap((outcome) => (outcome.state === 'answered' ? outcome.answer.cautions : []));

/** One part of the job under its heading. */
export function PartView({
  outcome,
  asked = [],
  said = [],
  elsewhere,
}: {
  readonly outcome: PartOutcome;
  /** The rules that its working asked for. */
  readonly asked?: readonly string[];
  readonly said?: readonly CautionId[];
  readonly elsewhere: FindElsewhere;
}): JSX.Element {
  return (
    <section class="part">
      <h2>{outcome.title}</h2>
      <Outcome outcome={outcome} asked={asked} said={said} elsewhere={elsewhere} />
    </section>
  );
}

function Outcome({
  outcome,
  asked,
  said,
  elsewhere,
}: {
  readonly outcome: PartOutcome;
  readonly asked: readonly string[];
  readonly said: readonly CautionId[];
  readonly elsewhere: FindElsewhere;
}): JSX.Element {
  switch (outcome.state) {
    case 'nothing':
      return <p>{outcome.why}</p>;
    case 'held':
      return <p>It waits behind the open stops.</p>;
    case 'wrong':
      return <ProblemSummary role="alert" problems={[outcome.problem]} way={wayBy(elsewhere)} />;
    case 'waiting':
      return (
        <p class="waiting">
          Waits for:{' '}
          {outcome.wanted.map(({ label, field }, place) => (
            <Fragment key={field + label}>
              {place > 0 ? ', ' : ''}
              <WayTo field={field} label={label} elsewhere={elsewhere} />
            </Fragment>
          ))}
          .
        </p>
      );
    case 'answered':
      return (
        <AnswerView
          name={outcome.name}
          answer={outcome.answer}
          asked={asked}
          drawings={drawingsOfPart(outcome.name, outcome.values, rules)}
          said={said}
          within="section"
        />
      );
  }
}
