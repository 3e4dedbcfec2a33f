import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { writeJobFile } from '../../job/job-file.ts';
import { namesOf } from '../../job/still-examples.ts';
import { page } from '../links.ts';
import { saveFile } from './save-file.ts';
import type { JobNews, JobState, OpenJob } from './use-job.ts';
import { fileNameOf, nameOf, said, whyNotKept } from './words.ts';

type JobLineProps = Omit<
  JobState<unknown>,
  'set' | 'reset' | 'leave' | 'result' | 'problems' | 'waitingFor'
> & {};

/** Which job is open, whether it is kept, and what another tab made of it. */
export function JobLine(state: JobLineProps): JSX.Element {
  const { job, trouble, news } = state;
  return (
    <div class="job-line">
      <p>
        {job.from === 'example' ? (
          <span>The example job is open. Change anything, and it is kept as a job of your own.</span>
        ) : (
          <span>
            Open: <strong>{nameOf(job.entries)}</strong>.
            {job.from === 'kept' && trouble === undefined ? ' Kept on this phone.' : null}
          </span>
        )}{' '}
        <a href={page('plan/jobs')}>
          {job.from === 'example'
            ? 'Begin with nothing filled in, or open another job'
            : 'All jobs on this phone'}
        </a>
      </p>
      <div role="status">
        {trouble === undefined ? null : (
          <div class="waiting">
            <p>
              Not kept: {whyNotKept[trouble]}. Work goes on while this page is open. Save the job to a file
              before you close it.
            </p>
            <button
              type="button"
              onClick={() => saveFile(fileNameOf(job.entries), writeJobFile(job.entries, job))}
            >
              Save this job to a file
            </button>
          </div>
        )}
        {job.from === 'address' ? (
          <div class="waiting">
            <p>This job came with the address, and is not kept on this phone yet. A change keeps it too.</p>
            <button type="button" onClick={state.keepNow}>
              Keep it on this phone
            </button>
          </div>
        ) : null}
        {news ? <News {...state} news={news} /> : null}
      </div>
    </div>
  );
}

function News({
  news,
  open,
  keepAsCopy,
  bringBack,
  backTo,
}: Pick<JobState<unknown>, 'open' | 'keepAsCopy' | 'bringBack' | 'backTo'> & {
  readonly news: JobNews;
}): JSX.Element {
  switch (news.kind) {
    case 'changed':
      return (
        <div class="waiting">
          <p>
            This job was changed in another tab, {said(news.theirs.changed)}. Nothing is written over: what
            you type here is kept as a copy.
          </p>
          <p class="acts">
            <button type="button" onClick={() => open(news.theirs.id)}>
              Take the change
            </button>
            <button type="button" class="plain" onClick={keepAsCopy}>
              Keep mine as a copy
            </button>
          </p>
        </div>
      );
    case 'deleted':
      return (
        <div class="waiting">
          <p>This job was deleted in another tab. What you type here is kept as a copy.</p>
          <button type="button" onClick={bringBack}>
            Bring it back
          </button>
        </div>
      );
    case 'copied':
      return (
        <div class="waiting">
          <p>
            Another tab {news.theirs.deleted ? 'deleted' : 'changed'} the job, so what you typed here is kept
            as a copy: {news.name}.{' '}
            {news.theirs.deleted
              ? 'The other is among those deleted lately.'
              : 'Both are among the jobs on this phone.'}
          </p>
          {news.theirs.deleted ? null : (
            <button type="button" class="plain" onClick={() => open(news.theirs.id)}>
              Open the other one
            </button>
          )}
        </div>
      );
    case 'left':
      return (
        <p class="waiting">
          Another home than the example’s: what was seen, done or signed there was taken out. Enter this
          home’s own: {namesOf(news.of)}.
        </p>
      );
    case 'example':
      return <BackTo {...news} backTo={backTo} />;
    case 'not here':
      return (
        <p class="waiting">
          The job of this address is not kept on this phone. To bring it here, open its file, or a link made
          under “Send this job on”.
        </p>
      );
    case 'unreadable':
      return <p class="waiting">The address holds no job that can be read. {news.says}</p>;
  }
}

/** The way back from the example. The button that led here stands at the end of a long page, so the focus comes to the way back. */
function BackTo({
  before,
  backTo,
}: Pick<JobState<unknown>, 'backTo'> & { readonly before: OpenJob }): JSX.Element {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), [before]);
  const name = nameOf(before.entries);
  return (
    <div class="waiting">
      <p>
        The example job is open now, in place of {name}
        {before.from === 'kept' ? ', which stays among the jobs on this phone' : ''}.
      </p>
      <button type="button" ref={button} onClick={() => backTo(before)}>
        Back to {name}
      </button>
    </div>
  );
}
