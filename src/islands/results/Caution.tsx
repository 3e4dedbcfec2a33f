import type { JSX } from 'preact';
import type { CautionId } from '../../generated/rule-types.ts';
import { cautionPieces } from '../../job/caution-words.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { useBook } from '../book.ts';
import { cautionPage, rulePage } from '../links.ts';

const heading = { stop: 'Stop', warn: 'Warning', note: 'Note' } as const;

/** The number of the note of each rule, on a page whose numbers stand again at its end. */
export type Notes = Readonly<Record<string, string>>;

/** The sentence of a caution, its values linked to their rules. */
function Words({ words, notes }: { readonly words: string; readonly notes: Notes }): JSX.Element {
  const { rules } = useBook();
  return (
    <>
      {cautionPieces(words, rules).map((piece, place) =>
        typeof piece === 'string' ? (
          piece
        ) : (
          <a key={place} class="rule" href={rulePage(piece.rule)} data-note={notes[piece.rule]}>
            {unbroken(piece.text)}
          </a>
        ),
      )}
    </>
  );
}

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
  const caution = useBook().cautions[id];
  if (!caution) return null;
  return (
    <>
      <div class={`caution ${caution.level}`} role="note">
        <p>
          <strong>{heading[caution.level]}.</strong> <Words words={caution.says} notes={notes} />{' '}
          <Words words={caution.do} notes={notes} />{' '}
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
  const { cautions } = useBook();
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
