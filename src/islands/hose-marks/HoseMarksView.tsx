import { Fragment, type JSX } from 'preact';
import type { Values } from '../../calc/declare/field.ts';
import type { Remark } from '../../calc/declare/remark.ts';
import { type hoseMarkFields, marksFrom } from '../../calc/marks/declaration.ts';
import { hoseCard } from '../../drawings/hose-card.ts';
import { drawnStretch } from '../../drawings/past-stretch.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import { bagsThrough } from '../../job/blown-through.ts';
import { ridgeOf } from '../../job/off-the-roof.ts';
import { markedOpenings } from '../../job/parts/marked-openings.ts';
import { marksPart } from '../../job/parts/marks.ts';
import { type PartOutcome, workPart } from '../../job/parts/part.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { ofWellsIn, type Skylight, skylightsIn } from '../../job/wells.ts';
import { format } from '../../quantity/format.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { SheetViewProps } from '../job/JobSheet.tsx';
import { calculationPage } from '../links.ts';
import { unansweredInALine } from '../parts/in-a-line.ts';
import { PartView } from '../parts/PartsView.tsx';
import { TableView } from '../results/AnswerView.tsx';
import { Cautions } from '../results/Caution.tsx';
import { FigureRow } from '../results/FigureRow.tsx';
import { Fold } from '../results/Fold.tsx';
import { Later } from '../results/Later.tsx';
import { Remarks } from '../results/Remarks.tsx';
import { RowWorkings } from '../results/RowWorkings.tsx';
import { Sheet } from '../results/Sheet.tsx';
import { rules } from '../rules.ts';

const three = { figures: 3 } as const;

type Answered = Extract<PartOutcome, { readonly state: 'answered' }>;

const isAnswered = (outcome: PartOutcome): outcome is Answered => outcome.state === 'answered';

/** How many pushes all openings take together, in a line. */
export function pushesInALine(plan: WorkedJob): string {
  const outcomes = workPart(marksPart, plan, rules);
  const cards = outcomes.filter(isAnswered);
  const [first] = outcomes;
  if (first && cards.length === 0) return unansweredInALine(first);
  const pushes = cards.reduce((count, { answer }) => count + (answer.tables?.marks?.rows.length ?? 0), 0);
  return `${cards.length} ${cards.length === 1 ? 'opening' : 'openings'}, ${pushes} pushes`;
}

/** What concerns the flue of one opening goes to the hole with its card. */
const OF_ITS_FLUE: readonly CautionId[] = ['caution.hose.flue-ahead', 'caution.flue.keep-clear'];
const ofItsFlue = (id: CautionId): boolean => OF_ITS_FLUE.includes(id);

/** A card for each opening, to print and take to the hole: the cautions that all cards share stand once, before them. */
export function HoseMarksView({ plan, elsewhere }: SheetViewProps): JSX.Element {
  const outcomes = workPart(marksPart, plan, rules);
  const cards = outcomes.filter(isAnswered);
  const openings = markedOpenings(plan, rules);
  const cautions = [...new Set(cards.flatMap(({ answer }): readonly CautionId[] => answer.cautions))].filter(
    (id) => !ofItsFlue(id),
  );
  return (
    <>
      <Cautions ids={cautions} />
      {cards.length > 0 ? (
        <p class="screen-only">
          Print this page: each opening comes out on a sheet of its own. How a mark is worked out stands on
          the page of the <a href={calculationPage('hose-marks')}>calculator</a>.
        </p>
      ) : null}
      {outcomes
        .filter((outcome) => !isAnswered(outcome))
        .slice(0, 1)
        .map((outcome) => (
          <PartView key={outcome.title} outcome={outcome} elsewhere={elsewhere} />
        ))}
      {cards.map((card, place) => {
        const opening = openings[outcomes.indexOf(card)];
        return (
          <Later key={card.title} of={card}>
            {() => (
              <HoleCard
                card={card}
                place={place}
                job={plan.job.name}
                ridge={ridgeOf(plan.job, plan.section)}
                bags={opening && bagsThrough(plan, opening)}
                skylights={opening ? skylightsIn(plan, opening.side, opening.hole) : []}
                wells={opening ? ofWellsIn(plan, opening.side, opening.hole) : []}
              />
            )}
          </Later>
        );
      })}
    </>
  );
}

function HoleCard({
  card: { title, name, answer, values },
  place,
  job,
  ridge,
  bags,
  skylights,
  wells,
}: {
  readonly card: Answered;
  readonly place: number;
  readonly job: string;
  readonly ridge: Quantity<'length'>;
  readonly bags: Quantity<'pieces'> | undefined;
  readonly skylights: readonly Skylight[];
  /** What is not counted in its stretch. */
  readonly wells: readonly Remark[];
}): JSX.Element {
  const { pushes, longest } = answer.figures;
  const found = marksFrom(values as Values<typeof hoseMarkFields>, rules);
  const words = { title, ridge, drawn: drawnStretch(found), skylights };
  return (
    <section class="hole-card">
      <h2>
        {title}, <span class="of-job">{job}</span>
      </h2>
      <Cautions ids={answer.cautions.filter(ofItsFlue)} />
      <dl class="figures">
        {bags ? <FigureRow label="Bags to blow through it" of={bags} options={three} /> : null}
        {[pushes, longest].flatMap((figure) =>
          figure && typeof figure.value !== 'string'
            ? [
                <div key={figure.label}>
                  <dt>{figure.label}</dt>
                  <dd>{format(figure.value, figure.format)}</dd>
                </div>,
              ]
            : [],
        )}
      </dl>
      <Sheet
        name={`${name}-${place + 1}`}
        caption={`From above: the pushes numbered in the order of the work, the farthest first. Thick: the flue; dashed: what is kept open about it.${
          skylights.length > 0 ? ' Crossed square: a skylight, whose well a hose may run into.' : ''
        }`}
        wide={hoseCard(found, rules, 'wide', words)}
        narrow={() => hoseCard(found, rules, 'narrow', words)}
      />
      <Fold title="The marks as a table, with what each push crosses">
        {() =>
          Object.entries(answer.tables ?? {}).map(([key, table]) => (
            <Fragment key={key}>
              <TableView {...table} />
              <RowWorkings {...table} />
            </Fragment>
          ))
        }
      </Fold>
      <Remarks of={[...wells, ...answer.remarks]} />
    </section>
  );
}
