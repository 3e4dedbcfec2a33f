import type { JSX } from 'preact';
import { page } from '../links.ts';
import { type JobSheetPath, jobSheets } from './sheets.ts';

/** The address of a sheet of the job. */
export const sheetPage = (path: string): string => page(path === '' ? 'plan' : `plan/${path}`);

/** Takes the job along: the address holds its entries, also where the browser keeps nothing. */
export function withJob(event: JSX.TargetedEvent<HTMLAnchorElement>): void {
  const link = event.currentTarget;
  link.hash = location.hash;
}

/** The sheets of this job. */
export const JobNav = ({ here }: { readonly here: JobSheetPath }): JSX.Element => (
  <nav class="sheets" aria-label="Sheets of this job">
    <ul>
      {jobSheets.map(({ path, title }) => (
        <li key={path}>
          <a href={sheetPage(path)} onClick={withJob} aria-current={path === here ? 'page' : undefined}>
            {title}
          </a>
        </li>
      ))}
    </ul>
  </nav>
);
