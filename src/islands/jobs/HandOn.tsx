import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { OpenedJob } from '../../job/job-file.ts';
import { carry } from '../../job/job-link.ts';
import { page } from '../links.ts';
import { codeOf, MOST_IN_ONE_CODE, QrCode } from './QrCode.tsx';
import { nameOf } from './words.ts';

/** A link, or a QR code, that carries the whole job to another phone. No server sees it: it stands behind the # of the address. */
export function HandOn({ job }: { readonly job: OpenedJob }): JSX.Element {
  const [link, setLink] = useState<string | undefined>();
  const [code, setCode] = useState<boolean[][] | undefined>();
  const [said, setSaid] = useState('');
  const box = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  const { entries } = job;
  // On one page stand many jobs.
  const toJob = <span class="visually-hidden"> to {nameOf(entries)}</span>;
  // A link of earlier entries would hand on an earlier job.
  useEffect(() => {
    setLink(undefined);
    setCode(undefined);
    setSaid('');
  }, [entries]);
  useEffect(() => {
    if (link !== undefined) box.current?.focus();
  }, [link]);

  const make = async (): Promise<string> => {
    const made = new URL(`${page('plan/jobs')}#${await carry(job)}`, location.href).href;
    setLink(made);
    return made;
  };
  const draw = async () => {
    const made = link ?? (await make());
    if (made.length > MOST_IN_ONE_CODE) {
      setSaid(
        `This job is too large for one QR code: found ${made.length} letters, expected ${MOST_IN_ONE_CODE} at most. Send the link, or save the job to a file.`,
      );
      return;
    }
    try {
      setCode(await codeOf(made));
      setSaid('The code is drawn below. Hold the other phone’s camera to it.');
    } catch {
      setSaid('The code can’t be drawn now. Send the link, or save the job to a file.');
    }
  };
  const share = async (made: string) => {
    try {
      await navigator.share({ title: nameOf(entries), url: made });
    } catch {
      // Sharing was called off; the link still stands there.
    }
  };
  return (
    <div class="hand-on">
      <p>
        The link holds the whole job. No copy of it is kept on the host of this site; the message or mail that
        you send it in keeps one. Who has the link can read the job. On the other phone it is offered, and
        writes over nothing.
      </p>
      <p class="acts">
        <button
          type="button"
          onClick={() => {
            make();
            setSaid('The link stands below.');
          }}
        >
          Make a link{toJob}
        </button>
        <button type="button" class="plain" onClick={draw}>
          Draw a QR code{toJob}
        </button>
      </p>
      <p role="status">{said}</p>
      {link === undefined ? null : (
        <div class="field">
          <label for={id}>Link to {nameOf(entries)}</label>
          <textarea
            id={id}
            ref={box}
            readOnly
            rows={3}
            value={link}
            onFocus={(event) => event.currentTarget.select()}
          />
          <p class="acts">
            <button
              type="button"
              class="plain"
              onClick={async () => {
                try {
                  await navigator.clipboard.writeText(link);
                  setSaid('The link is copied.');
                } catch {
                  box.current?.select();
                  setSaid('This browser does not let a page copy. The link is marked: copy it by hand.');
                }
              }}
            >
              Copy the link{toJob}
            </button>
            {'share' in navigator ? (
              <button type="button" class="plain" onClick={() => share(link)}>
                Send the link{toJob}
              </button>
            ) : null}
          </p>
        </div>
      )}
      {code ? <QrCode rows={code} label={`QR code of the link to ${nameOf(entries)}`} /> : null}
    </div>
  );
}
