import type { JSX } from 'preact';
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Entries } from '../../calc/declare/entries.ts';
import type { Read } from '../../calc/declare/read-fields.ts';
import { ANYTHING_ELSE, countInWords, MOST_WORDS, type Photograph } from '../../job/photograph.ts';
import { JobNav } from '../job/JobNav.tsx';
import { Onward, wayChosen } from '../job/Onward.tsx';
import { Arrivals, useArrivals } from '../jobs/Arrivals.tsx';
import { JobLine } from '../jobs/JobLine.tsx';
import { OpenFile } from '../jobs/OpenFile.tsx';
import { useJob } from '../jobs/use-job.ts';
import { nameOf, said, whyNotKept } from '../jobs/words.ts';
import { page } from '../links.ts';
import { saveWithPhotographs } from './export.ts';
import { headingOf, isTakenOn, type Listed, listed, placeOf, shownIn, times } from './list.ts';
import { PhotographPages } from './PhotographPages.tsx';
import { type PhotographsState, usePhotographs } from './use-photographs.ts';

/** The list asks for no figure of the job: it stands whether or not the job can be worked. */
const nothingToWork = (): Read<undefined> => ({ ok: true, value: undefined });

/** The photographs of a job: what is wanted, what is taken, and each on paper. */
export function PhotographsView({ example }: { readonly example: Entries }): JSX.Element {
  const work = useCallback(nothingToWork, []);
  const job = useJob(example, work);
  const { id, revision, entries, changed } = job.job;
  const own = () => (id !== undefined && revision > 0 ? id : job.keepNow());
  const state = usePhotographs(id, own, shownIn);
  const arrivals = useArrivals((came) => {
    job.open(came);
    state.look();
  });
  const [across, setAcross] = useState(2);
  const { photographs } = state;
  const taken = photographs ?? [];
  // What belongs to another way in than the one chosen is not asked for; what was taken all the same is shown.
  const way = wayChosen(entries);
  const wanted = listed.filter(
    (each) => !way || isTakenOn(each, way) || taken.some(({ entry }) => entry === each.id),
  );
  const none = wanted.filter((each) => !taken.some(({ entry }) => entry === each.id)).length;
  return (
    <>
      <JobLine {...job} />
      <JobNav here="photographs" />
      <p class="answer">
        <span class="label">{nameOf(entries)}</span>{' '}
        <output>{photographs ? countInWords(taken) : `${wanted.length} on the list`}</output>
      </p>
      {photographs ? (
        <>
          <p>
            {none === 0
              ? 'Every entry of the list has one.'
              : `Without one so far: ${none} of ${wanted.length} on the list. Leave out those that this home has no part of.`}
          </p>
          <State {...state} />
        </>
      ) : null}
      {(Object.keys(times) as (keyof typeof times)[]).map((when) => (
        <section key={when} aria-label={times[when]}>
          <h2>{times[when]}</h2>
          <ul class="photographs">
            {wanted
              .filter((each) => each.when === when)
              .map((each) => (
                <Entry key={each.id} of={each} state={state} />
              ))}
          </ul>
        </section>
      ))}
      <section aria-label="Anything else">
        <h2>Anything else</h2>
        <ul class="photographs">
          <Entry of={undefined} state={state} />
        </ul>
      </section>
      {photographs ? (
        <section class="keep" aria-label="Files and paper">
          <h2>Files and paper</h2>
          {taken.length > 0 ? (
            <>
              <p>
                A photograph is kept on this phone alone. The file below holds the job and its{' '}
                {countInWords(taken)}; where you then send it is up to you.
              </p>
              <p class="acts">
                <button
                  type="button"
                  onClick={() => saveWithPhotographs({ id, changed, entries }, taken).then(state.tell)}
                >
                  Save the job with its {countInWords(taken)}
                </button>
              </p>
              <div class="field">
                <label for="photographs-a-page">Photographs on a page, when it is printed</label>
                <select
                  id="photographs-a-page"
                  value={String(across)}
                  onChange={(event) => setAcross(Number(event.currentTarget.value))}
                >
                  <option value="2">2</option>
                  <option value="4">4</option>
                </select>
              </div>
            </>
          ) : null}
          <OpenFile id="open-job" label="Open a job file, with photographs or without" take={arrivals.take} />
          <Arrivals {...arrivals} />
        </section>
      ) : null}
      <Onward path="photographs" entries={entries} />
      <PhotographPages
        photographs={taken}
        addresses={state.addresses}
        job={nameOf(entries)}
        onAPage={across}
      />
    </>
  );
}

/** What happened, and what is not kept. */
function State({ told, trouble }: PhotographsState): JSX.Element {
  return (
    <div class="acts done happened">
      <p role="status">{told}</p>
      {trouble ? (
        <p class="waiting" role="alert">
          New photographs and words are not kept: {whyNotKept[trouble]}. They are held while this page is
          open. Save the job with its photographs below before you close it.
        </p>
      ) : null}
    </div>
  );
}

/** One entry of the list, with what was taken for it; without one, the place for the rest. */
function Entry({
  of,
  state,
}: {
  readonly of: Listed | undefined;
  readonly state: PhotographsState;
}): JSX.Element {
  const id = of?.id ?? ANYTHING_ELSE;
  const heading = of ? headingOf(of) : 'What the list does not name';
  const taken = (state.photographs ?? []).flatMap((photograph, place) =>
    placeOf(photograph) === id ? [{ photograph, number: place + 1 }] : [],
  );
  const title = useRef<HTMLHeadingElement>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const removed = state.removed && placeOf(state.removed.photograph) === id ? state.removed : undefined;
  useEffect(() => {
    if (removed) undo.current?.focus();
  }, [removed]);
  return (
    <li class={taken.length > 0 ? 'taken' : undefined} id={`photograph-${id}`}>
      <h3 ref={title} tabIndex={-1}>
        {heading}
        {taken.length > 0 ? <span class="how-many"> ({taken.length})</span> : null}
      </h3>
      <p class="hint">
        {of ? (
          <>
            {of.why} <a href={`${page(`do/${of.page}`)}#step-${of.step}`}>{`${of.title}, step ${of.step}`}</a>
            .{' '}
            {of.source.kind === 'practice' ? 'Common practice.' : 'Recalled, not checked against a document.'}
            {of.source.remark ? ` ${of.source.remark}` : ''}
          </>
        ) : (
          'A leak, a scratch, a repair: whatever the log speaks of.'
        )}
      </p>
      {removed ? (
        <p>
          <button
            type="button"
            ref={undo}
            onClick={() => {
              title.current?.focus();
              state.putBack();
            }}
          >
            Undo: put the photograph back
          </button>
        </p>
      ) : null}
      {state.photographs ? (
        <div class="acts">
          <Picker
            id={`take-${id}`}
            label="Take a photograph"
            of={heading}
            camera
            take={(files) => state.take(id, files)}
          />
          <Picker
            id={`choose-${id}`}
            label="Choose from this phone"
            of={heading}
            take={(files) => state.take(id, files)}
          />
        </div>
      ) : null}
      {taken.length > 0 ? (
        <div class="shown">
          {taken.map((each) => (
            <Taken key={each.photograph.id} {...each} state={state} />
          ))}
        </div>
      ) : null}
    </li>
  );
}

function Picker({
  id,
  label,
  of,
  camera = false,
  take,
}: {
  readonly id: string;
  readonly label: string;
  readonly of: string;
  readonly camera?: boolean;
  readonly take: (files: readonly File[]) => void;
}): JSX.Element {
  return (
    <span class="open-file needs-script">
      <input
        id={id}
        type="file"
        accept="image/*"
        multiple
        {...(camera ? { capture: 'environment' as const } : {})}
        class="visually-hidden"
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = '';
          take(files);
        }}
      />
      <label class={camera ? 'button' : 'button plain'} for={id}>
        {label}
        <span class="visually-hidden">: {of}</span>
      </label>
    </span>
  );
}

function Taken({
  photograph,
  number,
  state,
}: {
  readonly photograph: Photograph;
  readonly number: number;
  readonly state: PhotographsState;
}): JSX.Element {
  const { id, entry, words, taken, width, height } = photograph;
  const box = `words-${id}`;
  return (
    <figure class="photograph">
      <img
        src={state.addresses.get(id)}
        width={width}
        height={height}
        alt={`Photograph ${number}: ${words || shownIn(entry)}`}
      />
      <figcaption>
        {number}. Taken {said(taken)}
      </figcaption>
      <div class="field">
        <label for={box}>Words for photograph {number}</label>
        <span class="box">
          <input
            id={box}
            type="text"
            autocomplete="off"
            maxLength={MOST_WORDS}
            value={words}
            onInput={(event) => state.describe(photograph, event.currentTarget.value)}
          />
          <button type="button" class="plain" onClick={() => state.remove(photograph)}>
            Remove<span class="visually-hidden"> photograph {number}</span>
          </button>
        </span>
      </div>
    </figure>
  );
}
