import type { JSX } from 'preact';
import type { Photograph } from '../../job/photograph.ts';
import { said } from '../jobs/words.ts';
import { shownIn } from './list.ts';

interface PhotographPagesProps {
  readonly photographs: readonly Photograph[];
  readonly addresses: ReadonlyMap<string, string>;
  /** What the job is called. */
  readonly job: string;
  /** 2 or 4. */
  readonly onAPage: number;
}

/** The photographs on paper, so many a page, each with what it shows, when it was taken, the job, and its number. */
export function PhotographPages({
  photographs,
  addresses,
  job,
  onAPage,
}: PhotographPagesProps): JSX.Element | null {
  if (photographs.length === 0) return null;
  const pages = Array.from({ length: Math.ceil(photographs.length / onAPage) }, (_, place) =>
    photographs.slice(place * onAPage, (place + 1) * onAPage),
  );
  return (
    <div class="paper-only">
      {pages.map((each, place) => (
        <div key={place} class={onAPage === 4 ? 'photograph-page four' : 'photograph-page'}>
          {each.map((photograph, at) => (
            <figure key={photograph.id}>
              <img src={addresses.get(photograph.id)} alt="" />
              <figcaption>
                <strong>
                  {place * onAPage + at + 1} of {photographs.length}. {shownIn(photograph.entry)}
                </strong>
                {photograph.words === '' ? '' : `: ${photograph.words}`}. Taken {said(photograph.taken)}.{' '}
                {job}.
              </figcaption>
            </figure>
          ))}
        </div>
      ))}
    </div>
  );
}
