import type { JSX } from 'preact';
import { remarkPieces, remarkText } from '../../calc/declare/remark.ts';
import { receiptSheet, type SheetRow, stillMissing } from '../../calc/receipt/sheet.ts';
import { workPart } from '../../job/parts/part.ts';
import { receiptPart, receiptValues } from '../../job/parts/receipt.ts';
import type { WorkedJob } from '../../job/planned.ts';
import { format } from '../../quantity/format.ts';
import { ProblemSummary } from '../form/ProblemSummary.tsx';
import { wayBy } from '../form/WayTo.tsx';
import type { SheetViewProps } from '../job/JobSheet.tsx';
import { unansweredInALine } from '../parts/in-a-line.ts';
import { Cautions } from '../results/Caution.tsx';
import { Pieces } from '../results/Pieces.tsx';
import { Remarks } from '../results/Remarks.tsx';
import { rules } from '../rules.ts';

/** Is the paper ready, and if not, how much is missing? In a line. */
export function receiptInALine(plan: WorkedJob): string {
  const [outcome] = workPart(receiptPart, plan, rules);
  if (outcome?.state === 'wrong') return unansweredInALine(outcome);
  const { missing } = receiptSheet(receiptValues(plan, rules), rules);
  if (missing.length > 0 || !outcome) return `The receipt lacks ${missing.length} entries`;
  return outcome.state === 'answered'
    ? `The receipt is ${String(outcome.answer.figures.verdict?.value)}`
    : unansweredInALine(outcome);
}

/** The receipt and certificate: what it lacks, its cautions, and the paper itself, which prints alone. */
export function ReceiptView({ plan, elsewhere }: SheetViewProps): JSX.Element {
  const [outcome] = workPart(receiptPart, plan, rules);
  if (outcome?.state === 'wrong')
    return <ProblemSummary role="alert" problems={[outcome.problem]} way={wayBy(elsewhere)} />;
  const paper = receiptSheet(receiptValues(plan, rules), rules);
  const answer = outcome?.state === 'answered' ? outcome.answer : undefined;
  return (
    <>
      <p class="answer">
        <span class="label">{plan.job.name}</span> <output>{receiptInALine(plan)}</output>
      </p>
      <Cautions ids={answer?.cautions ?? []} />
      {paper.missing.length > 0 ? (
        <>
          <h2>Still missing</h2>
          <ul>
            {paper.missing.map((each) => (
              <li key={each}>{each}</li>
            ))}
          </ul>
        </>
      ) : null}
      <p>
        Thickness, area, bags and weight may come from plan and log. The R never does: it is copied from the
        maker’s paper for the settled thickness, since an estimate for a tapered cavity is not what the label
        was tested for, and the rule on receipts asks for the maker’s figure.
      </p>
      <Remarks
        of={(answer?.remarks ?? []).filter(
          (remark) =>
            ![...paper.statements.map(remarkText), stillMissing(paper.missing)].includes(remarkText(remark)),
        )}
      />
      <Paper {...paper} />
    </>
  );
}

function Paper({ title, head, parts, statements, signatures }: ReturnType<typeof receiptSheet>): JSX.Element {
  return (
    <section class="paper" aria-label={title}>
      <h2>{title}</h2>
      <Rows caption="The job" rows={head} />
      {parts.map(({ name, rows }) => (
        <Rows key={name} caption={name} rows={rows} />
      ))}
      <ul>
        {statements.map((each) => (
          <li key={remarkText(each)}>
            <Pieces of={remarkPieces(each)} />
          </li>
        ))}
      </ul>
      <Rows caption="To be signed by hand" rows={signatures} />
    </section>
  );
}

/** Some lines of the paper; what is not told yet is a line to write on. */
const Rows = ({
  caption,
  rows,
}: {
  readonly caption: string;
  readonly rows: readonly SheetRow[];
}): JSX.Element => (
  <table>
    <caption>{caption}</caption>
    <tbody>
      {rows.map(({ label, value, unit, format: how, askedBy }) => (
        <tr key={label}>
          <th scope="row">
            {label}
            {askedBy.length > 0 ? <span class="asked"> ({askedBy.join('; ')})</span> : null}
          </th>
          <td class={value === undefined ? 'blank' : undefined}>
            {value === undefined ? (
              <>
                <span class="visually-hidden">to be written</span> {unit}
              </>
            ) : typeof value === 'string' ? (
              value
            ) : (
              format(value, how)
            )}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
