import type { JSX } from 'preact';
import { asLimit, besideLimit, mostThatPasses } from '../../calc/ceiling/load.ts';
import { saidOfCeiling } from '../../job/said-beside.ts';
import { Cautions } from '../results/Caution.tsx';
import { FigureRow } from '../results/FigureRow.tsx';
import { Fold } from '../results/Fold.tsx';
import { Remarks } from '../results/Remarks.tsx';
import { Working } from '../results/Working.tsx';
import { rules } from '../rules.ts';
import { cautionsAt, type OfPlan } from './part.ts';

const tape = { tape: 8 } as const;
const three = { figures: 3 } as const;

/** Does the ceiling carry it, and what would it carry? */
export function Ceiling({ plan }: OfPlan): JSX.Element {
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
