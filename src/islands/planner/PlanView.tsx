import type { ComponentChildren, JSX } from 'preact';
import { tooFewToTell } from '../../calc/fill/bags.ts';
import { clashSentence, departureSentences } from '../../calc/holes/words.ts';
import { roofPlan } from '../../drawings/roof-plan.ts';
import type { PlannedRow, WorkedJob } from '../../job/planned.ts';
import { holesAreCut, saidOfHoles } from '../../job/said-beside.ts';
import { USUAL_WAY, wayTaken } from '../../job/way-taken.ts';
import { withinReach } from '../../job/within-reach.ts';
import { format } from '../../quantity/format.ts';
import { minus, type Quantity } from '../../quantity/quantity.ts';
import { rulesBehind } from '../../quantity/working.ts';
import { sheetPage, withJob } from '../job/JobNav.tsx';
import { AnswerLine } from '../results/AnswerLine.tsx';
import { Cautions } from '../results/Caution.tsx';
import { Fold } from '../results/Fold.tsx';
import { Later } from '../results/Later.tsx';
import { Remarks } from '../results/Remarks.tsx';
import { RuleLinks } from '../results/RuleLinks.tsx';
import { Sheet } from '../results/Sheet.tsx';
import { rules } from '../rules.ts';
import { Cavity, CavityFigures, ResistanceSheet } from './CavityPart.tsx';
import { Ceiling } from './CeilingPart.tsx';
import { Fill, HowFilled } from './FillPart.tsx';
import { HoleTable } from './HoleTable.tsx';
import { optional } from './optional.ts';
import { cautionsAt, type OfPlan } from './part.ts';

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
