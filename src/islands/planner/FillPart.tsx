import type { JSX } from 'preact';
import { printed, remarkPieces, said } from '../../calc/declare/remark.ts';
import { highEnd, lowEnd } from '../../calc/fill/ends.ts';
import { holesAreCut, saidOfFill } from '../../job/said-beside.ts';
import { Cautions } from '../results/Caution.tsx';
import { FigureRow } from '../results/FigureRow.tsx';
import { Fold } from '../results/Fold.tsx';
import { Pieces } from '../results/Pieces.tsx';
import { Remarks } from '../results/Remarks.tsx';
import { Working } from '../results/Working.tsx';
import { cautionsAt, type OfPlan } from './part.ts';

const three = { figures: 3 } as const;

/** How much fill the plan takes. */
export function Fill({ plan }: OfPlan): JSX.Element {
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

/** How that is worked out, hole by hole. */
export const HowFilled = ({ plan, plan: { resistance } }: OfPlan): JSX.Element => (
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
