import { Fragment, type JSX } from 'preact';
import { type Entries, textAt } from '../../calc/declare/entries.ts';
import { type Way, ways } from '../../calc/ways/compare.ts';
import { page } from '../links.ts';
import { sheetPage, withJob } from './JobNav.tsx';
import { nextSheet, procedures, proceduresOf } from './procedures.ts';
import type { JobSheetPath } from './sheets.ts';

/** The way in that was chosen, as it was typed; undefined while none is. */
export const wayChosen = (entries: Entries): Way | undefined =>
  ways.find((way) => way === textAt(entries, ['ways', 'chosen']));

/** Where a sheet leads: to the procedures of its work, and to the sheet after it. */
export function Onward({
  path,
  entries,
}: {
  readonly path: JobSheetPath;
  readonly entries: Entries;
}): JSX.Element {
  const work = proceduresOf(path, wayChosen(entries));
  const next = nextSheet(path);
  return (
    <nav class="onward screen-only" aria-label="Onward">
      {work.length > 0 ? (
        <p>
          The work, step by step:{' '}
          {work.map((each, place) => (
            <Fragment key={each}>
              {place > 0 ? '; ' : ''}
              <a href={page(`do/${each}`)}>{procedures[each]}</a>
            </Fragment>
          ))}
        </p>
      ) : null}
      {next ? (
        <p>
          Next sheet:{' '}
          <a href={sheetPage(next.path)} onClick={withJob}>
            {next.title}
          </a>
        </p>
      ) : null}
    </nav>
  );
}
