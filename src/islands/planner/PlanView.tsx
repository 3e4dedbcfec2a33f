import type { ComponentChildren, JSX } from 'preact';
import { asLimit, besideLimit, mostThatPasses } from '../../calc/ceiling/load.ts';
import { printed, type Remark, remarkPieces, remarkText, said } from '../../calc/declare/remark.ts';
import { tooFewToTell } from '../../calc/fill/bags.ts';
import { highEnd, lowEnd } from '../../calc/fill/ends.ts';
import { clashSentence, departureSentences } from '../../calc/holes/words.ts';
import { resistanceDrawing } from '../../drawings/resistance-across.ts';
import { roofPlan } from '../../drawings/roof-plan.ts';
import { sectionDrawing } from '../../drawings/section.ts';
import { sectionSheet } from '../../drawings/section-sheet.ts';
import type { CautionId } from '../../generated/rule-types.ts';
import { ofBlownThrough } from '../../job/blown-through.ts';
import { heldBy } from '../../job/cautions.ts';
import type { PlacedCaution, PlannedHole, PlannedRow, WorkedJob } from '../../job/planned.ts';
import { holesAreCut, saidOfCeiling, saidOfFill, saidOfHoles } from '../../job/said-beside.ts';
import { USUAL_WAY, wayTaken } from '../../job/way-taken.ts';
import { ofWellsIn } from '../../job/wells.ts';
import { withinReach } from '../../job/within-reach.ts';
import { format } from '../../quantity/format.ts';
import { minus, type Quantity } from '../../quantity/quantity.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { rulesBehind } from '../../quantity/working.ts';
import { sheetPage, withJob } from '../job/JobNav.tsx';
import type { SheetViewProps } from '../job/JobSheet.tsx';
import { AnswerLine } from '../results/AnswerLine.tsx';
import { columnsOf } from '../results/AnswerView.tsx';
import { Cautions } from '../results/Caution.tsx';
import { FigureRow } from '../results/FigureRow.tsx';
import { Fold } from '../results/Fold.tsx';
import { Later } from '../results/Later.tsx';
import { Pieces } from '../results/Pieces.tsx';
import { Remarks } from '../results/Remarks.tsx';
import { RuleLinks } from '../results/RuleLinks.tsx';
import { Sheet } from '../results/Sheet.tsx';
import { Working } from '../results/Working.tsx';
import { rules } from '../rules.ts';

const tape = { tape: 8 } as const;
const three = { figures: 3 } as const;

/** The plan in a line: holes, bags, ceiling. */
export function shortAnswer(plan: WorkedJob): string {
  const holes = plan.rows.reduce((count, row) => count + row.holes.length, 0);
  const ceiling = plan.load.verdict === 'unrated' ? 'is unrated' : plan.load.verdict;
  const way = wayTaken(plan.job);
  const openings = way === USUAL_WAY ? `${holes} ${holes === 1 ? 'hole' : 'holes'}` : `by the ${way}`;
  const reached = way === USUAL_WAY ? undefined : withinReach(plan, rules);
  const bags =
    reached && !tooFewToTell(minus(plan.bags, reached))
      ? `${format(reached, three)} within reach of ${format(plan.bags, three)}`
      : format(plan.bags, three);
  return `${openings}, ${bags}, the ceiling ${ceiling}`;
}

/** The whole plan: what stops it, the answer, the drawings, each part with its cautions and its working. */
export function PlanView({ plan }: OfPlan): JSX.Element {
  const cut = holesAreCut(plan);
  const tables = plan.rows.map((row) => (
    <Later key={row.side} of={plan}>
      {() => <HoleTable row={row} plan={plan} double={plan.rows.length > 1} />}
    </Later>
  ));
  const later = (Part: (of: OfPlan) => JSX.Element | null) => (
    <Later of={plan}>{() => <Part plan={plan} />}</Later>
  );
  return (
    <>
      <AnswerLine of={plan.job.name} words={shortAnswer(plan)} />
      {later(Before)}
      {cut ? null : later(WayInstead)}
      <Cut cut={cut}>
        {later(Holes)}
        {later(RoofSheet)}
        {tables}
        {later(HowPlaced)}
      </Cut>
      {later(Fill)}
      {later(HowFilled)}
      {later(Ceiling)}
      {later(Cavity)}
      {later(ResistanceSheet)}
      {later(CavityFigures)}
      {later(EveryRule)}
    </>
  );
}

type OfPlan = Pick<SheetViewProps, 'plan'>;

/** The cautions of a part of the plan. What holds the plan stands before all of it. */
function cautionsAt(plan: WorkedJob): (place: PlacedCaution['at']) => CautionId[] {
  const held = heldBy(plan).map(({ id }) => id);
  return (place) =>
    plan.cautions.filter((each) => each.at === place && !held.includes(each.id)).map(({ id }) => id);
}

function Before({ plan }: OfPlan): JSX.Element {
  const at = cautionsAt(plan);
  return (
    <>
      <h2>Before you start</h2>
      <Cautions ids={at('before')} />
    </>
  );
}

/** Holes of a way that is not taken are kept out of sight, and off the paper: whoever is handed it would cut them. */
const Cut = ({ cut, children }: { readonly cut: boolean; readonly children: ComponentChildren }) =>
  cut ? (
    children
  ) : (
    <details class="behind-stops">
      <summary>Holes of the plan, not to be cut</summary>
      {children}
    </details>
  );

const WayInstead = ({ plan }: OfPlan): JSX.Element => (
  <>
    <h2>The way in</h2>
    <Remarks of={saidOfHoles(plan)} />
    <p>
      Its openings stand on the sheet{' '}
      <a href={sheetPage('ways-in')} onClick={withJob}>
        Ways in
      </a>
      .
    </p>
    <Cautions ids={cautionsAt(plan)('layout')} />
  </>
);

function Holes({ plan }: OfPlan): JSX.Element {
  const cut = holesAreCut(plan);
  return (
    <>
      <h2>Holes</h2>
      {cut ? <Remarks of={saidOfHoles(plan)} /> : null}
      {cut ? <Cautions ids={cautionsAt(plan)('layout')} /> : null}
      {plan.rows.map((row) => (
        <RowTrouble key={row.side} row={row} />
      ))}
    </>
  );
}

const RoofSheet = ({ plan }: OfPlan): JSX.Element => (
  <Sheet
    name="roof"
    caption={`Dashed: trusses. Thin: seams. Dash-dot: the ridge, and the ends of each stretch. Squares: ${
      plan.job.roof.cover === 'metal'
        ? 'the metal patch and the membrane over it'
        : 'what patch and membrane of a metal roof would take, and not this one'
    }. Dashed ring: kept open about a hot flue.`}
    wide={roofPlan(plan, rules, 'across the sheet')}
    narrow={() => roofPlan(plan, rules, 'down the sheet')}
  />
);

const HowPlaced = ({ plan }: OfPlan): JSX.Element => (
  <Fold title="How the places are found">
    {() => (
      <>
        <p>
          Every place on the tape, to the eighth of an inch, is weighed. Of all layouts that hold every rule,
          the plan takes the fewest holes, then the fewest patches over a seam, then the most even gaps, then
          the least moved from the even places.
        </p>
        {plan.rows[0]?.holes[0] ? <RuleList of={[plan.rows[0].holes[0].along]} /> : null}
      </>
    )}
  </Fold>
);

function Fill({ plan }: OfPlan): JSX.Element {
  const { resistance } = plan;
  const at = cautionsAt(plan);
  return (
    <>
      <h2>Fill</h2>
      <Cautions ids={at('fill')} />
      <dl class="figures">
        <FigureRow label="Bags" of={plan.bags} options={three} />
        <FigureRow label="Bags to load, with the usual spread" of={plan.bagsToLoad} />
        <FigureRow label="Weight" of={plan.weight} />
        <FigureRow label="Volume to fill" of={plan.volume} />
        {resistance ? (
          <div>
            <dt>R per inch, from {resistance.from}</dt>
            <dd>
              <Pieces
                of={remarkPieces(
                  resistance.from === 'the label'
                    ? said`${printed(resistance.value, three)}`
                    : said`${printed(resistance.value, three)}, between ${printed(resistance.low, lowEnd)} and ${printed(resistance.high, highEnd)}`,
                )}
              />
            </dd>
          </div>
        ) : null}
      </dl>
      <Remarks of={saidOfFill(plan)} />
    </>
  );
}

const HowFilled = ({ plan, plan: { resistance } }: OfPlan): JSX.Element => (
  <>
    <Fold title="How the bags are worked out">{() => <Working of={plan.bagsToLoad} />}</Fold>
    {(holesAreCut(plan) ? plan.rows : []).flatMap((row) =>
      row.holes.map((hole) => (
        <Fold
          key={row.side + String(hole.number)}
          title={`How the bags of hole ${hole.number}${plan.rows.length > 1 ? `, ${row.side} side,` : ''} are worked out`}
        >
          {() => <Working of={hole.bags} options={three} />}
        </Fold>
      )),
    )}
    {resistance ? (
      <Fold title="How R per inch is worked out">
        {() => <Working of={resistance.value} options={three} />}
      </Fold>
    ) : null}
  </>
);

function Ceiling({ plan }: OfPlan): JSX.Element {
  const at = cautionsAt(plan);
  return (
    <>
      <h2>Ceiling</h2>
      <Cautions ids={at('ceiling')} />
      <dl class="figures">
        <div>
          <dt>The ceiling</dt>
          <dd>{plan.load.verdict}</dd>
        </div>
        <FigureRow
          label="Weight on it at the deepest place"
          of={plan.load.total}
          options={besideLimit(plan.load.total, plan.load.limit)}
        />
        {plan.load.limit ? (
          <FigureRow label="What the board may carry" of={plan.load.limit} options={asLimit} />
        ) : null}
        {plan.load.highestDensity ? (
          <FigureRow
            label="Highest density that passes"
            of={plan.load.highestDensity}
            options={mostThatPasses}
          />
        ) : null}
        {plan.load.greatestDepth ? (
          <FigureRow
            label="Greatest depth of new fill that passes"
            of={plan.load.greatestDepth}
            options={{ ...tape, ...mostThatPasses }}
          />
        ) : null}
      </dl>
      <Remarks of={saidOfCeiling(plan, rules)} />
      <Fold title="How the load is worked out">
        {() => (
          <>
            {plan.load.highestDensity ? (
              <Working of={plan.load.highestDensity} options={mostThatPasses} />
            ) : null}
            <Working of={plan.load.total} options={three} />
          </>
        )}
      </Fold>
    </>
  );
}

const EveryRule = ({ plan, plan: { resistance } }: OfPlan): JSX.Element => (
  <>
    <h2>Every rule behind this plan</h2>
    <RuleList
      of={[
        ...(holesAreCut(plan) ? plan.rows : []).flatMap((row) =>
          row.holes.flatMap((hole) => [hole.along, hole.bags]),
        ),
        plan.bagsToLoad,
        plan.load.total,
        ...optional(plan.load.limit),
        ...optional(resistance?.high),
      ]}
    />
  </>
);

const optional = <T extends Quantity | Remark>(each: T | undefined): T[] => (each ? [each] : []);

/** The rules that some figures rest on, each a link to its page. */
const RuleList = ({ of }: { readonly of: readonly Quantity[] }): JSX.Element => (
  <RuleLinks ids={rulesBehind(...of)} />
);

function RowTrouble({ row }: { readonly row: PlannedRow }): JSX.Element | null {
  if (row.clash.length === 0) return null;
  return (
    <div class="trouble">
      <p>{clashSentence(row.clash)}</p>
      {row.departures.length > 0 ? (
        <>
          <p>The least departure:</p>
          <ul>
            {departureSentences(row.departures).map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </>
      ) : (
        <p>No place is left for a hole.</p>
      )}
    </div>
  );
}

function HoleTable({
  row,
  plan,
  double,
}: {
  readonly row: PlannedRow;
  readonly plan: WorkedJob;
  readonly double: boolean;
}): JSX.Element | null {
  if (row.holes.length === 0) return null;
  return (
    <table {...columnsOf(7)}>
      <caption>
        {double ? `Holes on the ${row.side} side` : 'Holes on the back side'},{' '}
        <Pieces
          of={remarkPieces(said`${rules.value('access.roof-holes.below-peak')} down the slope from the peak`)}
        />
      </caption>
      <thead>
        <tr>
          <th scope="col">Hole</th>
          <th scope="col">From the starting end</th>
          <th scope="col">To the next</th>
          <th scope="col">Fills from</th>
          <th scope="col">to</th>
          <th scope="col">Bags</th>
          <th scope="col">Weight</th>
        </tr>
      </thead>
      {row.holes.map((hole, place) => {
        const remarks = remarksOf(hole, row, plan);
        const said = remarks.length > 0;
        return (
          <tbody key={hole.number}>
            <tr class={said ? 'remarked' : undefined}>
              <th scope={said ? 'rowgroup' : 'row'} rowSpan={said ? 2 : 1}>
                {hole.number}
              </th>
              <td data-label="From the starting end">{unbroken(format(hole.along, tape))}</td>
              <td data-label="To the next">
                {row.gaps[place] ? unbroken(format(row.gaps[place], tape)) : 'end'}
              </td>
              <td data-label="Fills from">{unbroken(format(hole.from, tape))}</td>
              <td data-label="to">{unbroken(format(hole.to, tape))}</td>
              <td data-label="Bags">{unbroken(format(hole.bags, three))}</td>
              <td data-label="Weight">{unbroken(format(hole.weight, three))}</td>
            </tr>
            {said ? (
              <tr class="remark">
                <td colSpan={6}>{remarks.join('; ')}</td>
              </tr>
            ) : null}
          </tbody>
        );
      })}
    </table>
  );
}

const remarksOf = (hole: PlannedHole, row: PlannedRow, plan: WorkedJob): string[] => [
  ...(hole.overSeam ? ['metal patch crosses a seam'] : []),
  ...(hole.movedFar
    ? [`moved ${format({ ...hole.moved, amount: Math.abs(hole.moved.amount) }, tape)} from its even place`]
    : []),
  ...(ofWellsIn(plan, row.side, hole).length > 0 ? ['a skylight whose well is not counted'] : []),
  ...optional(ofBlownThrough(plan, row, hole.number, rules)).map((remark) => unbroken(remarkText(remark))),
  ...hole.kept.map((space) => `${space.what}: keep ${format(space.across)} across clear`),
];

function Cavity({ plan }: OfPlan): JSX.Element {
  return (
    <>
      <h2>The cavity</h2>
      <Sheet
        name="section"
        caption="To scale."
        wide={sectionDrawing(plan, sectionSheet(plan, 'wide'), 'section-wide')}
        narrow={() => sectionDrawing(plan, sectionSheet(plan, 'narrow'), 'section-narrow')}
      />
    </>
  );
}

function ResistanceSheet({ plan }: OfPlan): JSX.Element | null {
  const wide = resistanceDrawing(plan, rules, sectionSheet(plan, 'wide'));
  const narrow = resistanceDrawing(plan, rules, sectionSheet(plan, 'narrow'));
  return wide && narrow ? (
    <Sheet
      name="resistance"
      caption="Old and new together; films, ceiling and framing left out. Thick: as estimated. Thin: the ends of what is uncertain."
      wide={wide}
      narrow={() => narrow}
    />
  ) : null;
}

const CavityFigures = ({ plan }: OfPlan): JSX.Element => (
  <>
    <dl class="figures">
      <FigureRow label="Area of the section" of={plan.section.area} />
      <FigureRow label="Mean depth" of={plan.section.meanDepth} options={tape} />
      <FigureRow label="Area free for new fill" of={plan.free.free} />
    </dl>
    <Fold title="How the cross-section is worked out">{() => <Working of={plan.free.free} />}</Fold>
  </>
);
