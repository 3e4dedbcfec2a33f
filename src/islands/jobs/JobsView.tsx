import type { JSX } from 'preact';
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Entries } from '../../calc/declare/entries.ts';
import { sentence } from '../../calc/declare/read-fields.ts';
import { carriesJob, readCarried } from '../../job/job-link.ts';
import { writeJobs } from '../../job/jobs-file.ts';
import type { KeptJob } from '../../job/kept-job.ts';
import { countInWords, type Photograph } from '../../job/photograph.ts';
import { forAnotherHome } from '../../job/still-examples.ts';
import { setAddress } from '../own-address.ts';
import { saveWithPhotographs } from '../photographs/export.ts';
import { photographStore } from '../photographs/store.ts';
import { Arrivals, useArrivals } from './Arrivals.tsx';
import type { WhyNot } from './browser-store.ts';
import { JobRow } from './JobRow.tsx';
import { NewJob } from './NewJob.tsx';
import { OpenFile } from './OpenFile.tsx';
import { saveFile } from './save-file.ts';
import { sheetOf } from './sheet-of.ts';
import { DAYS_KEPT_AFTER_DELETION, jobStore, type Unreadable } from './store.ts';
import { copied, nameOf, notRenamed, said, whyNotKept } from './words.ts';

interface Shown {
  readonly jobs: readonly KeptJob[];
  readonly unreadable: readonly Unreadable[];
  readonly trouble: WhyNot | undefined;
}

/** What was done last, in words, and the job that can be brought back from it. */
interface Done {
  readonly words: string;
  readonly undo?: KeptJob;
  /** What was pressed goes away with it: whoever works by keyboard goes on from the words. */
  readonly takesFocus?: true;
}

/** The jobs that this browser keeps, and all that can be done with one. */
export function JobsView({ example }: { readonly example: Entries }): JSX.Element | null {
  const [shown, setShown] = useState<Shown | undefined>();
  const [done, setDone] = useState<Done | undefined>();
  const [focus, setFocus] = useState<string | undefined>();
  const [photographs, setPhotographs] = useState<readonly Photograph[]>([]);
  const undo = useRef<HTMLButtonElement>(null);
  const told = useRef<HTMLParagraphElement>(null);

  const look = useCallback(() => {
    const store = jobStore();
    setShown({ ...store.all(), trouble: store.trouble() });
    photographStore().all().then(setPhotographs);
  }, []);
  const photographsOf = (id: string) => photographs.filter(({ job }) => job === id);
  const arrivals = useArrivals((id) => {
    look();
    setFocus(id);
  });
  const { offer, tell } = arrivals;

  // Once, when the page begins to run.
  useEffect(() => {
    const store = jobStore();
    store.takeSingle();
    look();
    const carried = () => {
      const fragment = location.hash.slice(1);
      if (!carriesJob(fragment)) return;
      const read = readCarried(fragment);
      // The job is offered once; a reload of the page does not offer it again.
      setAddress();
      if (read.ok) offer(read.value);
      else tell(`The link can’t be opened. ${read.problems.map(sentence).join(' ')}`);
    };
    store.recover().then(() => {
      // Only now: the second copy may know that one was brought back.
      store.purgeOld();
      look();
      carried();
    });
    addEventListener('hashchange', carried);
    addEventListener('pageshow', look);
    const unwatch = store.watch(look);
    return () => {
      removeEventListener('hashchange', carried);
      removeEventListener('pageshow', look);
      unwatch();
    };
  }, []);

  useEffect(() => {
    if (focus === undefined) return;
    document.getElementById(`job-${focus}`)?.focus();
    setFocus(undefined);
  }, [focus]);
  useEffect(() => {
    if (done?.undo) undo.current?.focus();
    if (done?.takesFocus) told.current?.focus();
  }, [done]);

  const after = (next: Done, id?: string) => {
    setDone(next);
    look();
    if (id !== undefined) setFocus(id);
  };
  /** Nothing to tell takes nothing off that stands there, such as a way back. */
  const toldOf = (words: string) => {
    if (words) after({ words });
  };
  const remove = (job: KeptJob) => {
    const marked = jobStore().mark(job.id, true);
    after({ words: `Deleted: ${nameOf(job.entries)}.`, ...(marked ? { undo: marked } : {}) });
  };
  const bringBack = (job: KeptJob) => {
    jobStore().mark(job.id, false);
    after({ words: `Brought back: ${nameOf(job.entries)}.` }, job.id);
  };
  const copy = (job: KeptJob) => {
    // A copy is for another home: what was seen, done or signed at the first would be taken for its own.
    const { entries, left } = forAnotherHome(job.entries);
    const added = jobStore().add(copied(entries, jobStore().all().jobs));
    const stays = [...left, ...(photographsOf(job.id).length > 0 ? ['the photographs'] : [])].join(', ');
    const more = stays === '' ? '' : ` Of the first home alone, and not copied: ${stays}.`;
    after({ words: `Copied: ${nameOf(added.entries)}.${more}` }, added.id);
  };

  // Before the page runs, and where it never does, there is nothing here to touch.
  if (!shown) return null;
  const jobs = shown.jobs.filter(({ deleted }) => deleted === undefined);
  const deleted = shown.jobs.filter((job) => job.deleted !== undefined);
  const ofNoJob = photographs.filter(
    ({ job }) => !shown.jobs.some(({ id }) => id === job) && !jobStore().isUnreadable(job),
  );
  return (
    <>
      {shown.trouble ? (
        <p class="waiting" role="alert">
          Nothing new is kept: {whyNotKept[shown.trouble]}. Work goes on while a page is open. Save each job
          to a file before you close it.
        </p>
      ) : null}
      <Arrivals {...arrivals} />
      <div class="acts done">
        <p role="status" ref={told} tabIndex={-1}>
          {done?.words}
        </p>
        {done?.undo ? (
          <button type="button" ref={undo} onClick={() => done.undo && bringBack(done.undo)}>
            Undo: bring {nameOf(done.undo.entries)} back
          </button>
        ) : null}
      </div>
      {jobs.length === 0 ? <p>This phone keeps no job yet.</p> : null}
      <ul class="jobs">
        {jobs.map((job) => (
          <JobRow
            key={job.id}
            job={job}
            photographs={photographsOf(job.id)}
            copy={() => copy(job)}
            rename={(name) => {
              const same = nameOf({ name }) === nameOf(job.entries);
              if (same) return after({ words: notRenamed(name) }, job.id);
              const put = jobStore().put({ id: job.id, entries: { ...job.entries, name } }, job.revision);
              after(
                {
                  words:
                    put.state === 'overtaken'
                      ? 'Not renamed: the job was changed in another tab just now. The list is up to date again.'
                      : `Renamed: ${nameOf(put.job.entries)}.`,
                },
                job.id,
              );
            }}
            remove={() => remove(job)}
            tell={toldOf}
          />
        ))}
      </ul>
      <NewJob
        make={(entries) => {
          const job = jobStore().add(entries);
          jobStore().opened = job.id;
          location.assign(sheetOf(job));
        }}
        example={example}
      />
      <h2>Files</h2>
      <p class="acts">
        {jobs.length > 0 ? (
          <button type="button" class="plain" onClick={() => saveFile('jobs.json', writeJobs(jobs))}>
            Save all jobs to one file, without photographs
          </button>
        ) : null}
      </p>
      <OpenFile id="open-jobs" label="Open a file with one job or many" take={arrivals.take} />
      {deleted.length > 0 ? (
        <>
          <h2>Deleted lately</h2>
          <p>Each can be brought back for {DAYS_KEPT_AFTER_DELETION} days, then it is gone.</p>
          <ul class="jobs">
            {deleted.map((job) => (
              <li key={job.id}>
                <p>
                  <strong>{nameOf(job.entries)}</strong>, deleted {said(job.deleted)}
                  {photographsOf(job.id).length > 0 ? `, with ${countInWords(photographsOf(job.id))}` : ''}
                </p>
                <p class="acts">
                  <button type="button" class="plain" onClick={() => bringBack(job)}>
                    Bring {nameOf(job.entries)} back
                  </button>
                </p>
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {ofNoJob.length > 0 ? (
        <>
          <h2>Photographs of no job</h2>
          <p>
            {countInWords(ofNoJob)}, of a job that this phone no longer has. Open the file of that job, and
            they are with it again.
          </p>
          <p class="acts">
            <button
              type="button"
              class="plain"
              onClick={() =>
                saveWithPhotographs({ entries: { name: 'Photographs of no job' } }, ofNoJob).then(toldOf)
              }
            >
              Save them to a file
            </button>
            <button
              type="button"
              class="plain"
              onClick={() =>
                photographStore()
                  .remove(ofNoJob.map(({ id }) => id))
                  .then(() =>
                    after({ words: `Removed for good: ${countInWords(ofNoJob)}.`, takesFocus: true }),
                  )
              }
            >
              Remove them for good
            </button>
          </p>
        </>
      ) : null}
      {shown.unreadable.length > 0 ? (
        <>
          <h2>Can’t be read</h2>
          <p>
            These are left as they are. Save each to a file. If a newer copy of the site kept it, open the
            file on this page of that copy.
          </p>
          <ul class="jobs">
            {shown.unreadable.map(({ key, text, says }) => (
              <li key={key}>
                <p>{says}</p>
                <p class="acts">
                  <button type="button" class="plain" onClick={() => saveFile('kept-job.json', text)}>
                    Save it to a file
                  </button>
                </p>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </>
  );
}
