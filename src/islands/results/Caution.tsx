import type { JSX } from 'preact';
import type { CautionId } from '../../generated/rule-types.ts';
import { cautionPieces } from '../../job/caution-words.ts';
import { theBook } from '../book.ts';
import { cautionPage } from '../links.ts';
import { type Notes, Pieces } from './Pieces.tsx';

const heading = { stop: 'Stop', warn: 'Warning', note: 'Note' } as const;

/** A caution where it concerns: its level as a word, what is the matter, what to do; then, under their names, what agencies say beside it. */
export function Caution({
  id,
  notes = {},
  bare = false,
}: {
  readonly id: CautionId;
  readonly notes?: Notes;
  /** Without its source, where what stands beside it leads there. */
  readonly bare?: boolean;
}): JSX.Element | null {
  const { cautions, rules } = theBook();
  const caution = cautions[id];
  if (!caution) return null;
  return (
    <>
      <div class={`caution ${caution.level}`} role="note">
        <p>
          <strong>{heading[caution.level]}.</strong>{' '}
          <Pieces of={cautionPieces(`${caution.says} ${caution.do}`, rules)} notes={notes} />{' '}
          {bare ? null : <a href={cautionPage(id)}>Source: {caution.from}</a>}
        </p>
      </div>
      {caution.beside?.map(({ agency, level, says, do: act, from }) => (
        <div key={`${agency} ${says}`} class={`caution local-caution ${level}`} role="note">
          <p>
            <strong>
              {heading[level]}, {agency}.
            </strong>{' '}
            {says} {act} {bare ? null : `Source: ${from}`}
          </p>
        </div>
      ))}
    </>
  );
}

const gravity = { stop: 0, warn: 1, note: 2 } as const;

/** Some cautions, the gravest first. */
export function Cautions({
  ids,
  bare = false,
}: {
  readonly ids: readonly CautionId[];
  readonly bare?: boolean;
}): JSX.Element {
  const { cautions } = theBook();
  return (
    <>
      {[...ids]
        .sort((a, b) => gravity[cautions[a]?.level ?? 'note'] - gravity[cautions[b]?.level ?? 'note'])
        .map((id) => (
          <Caution key={id} id={id} bare={bare} />
        ))}
    </>
  );
}
