import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Entries } from '../../calc/declare/entries.ts';
import { NONE_OF_EXAMPLE } from '../../job/still-examples.ts';

/** Where a job begins, with nothing filled in or with the example's entries. */
export function NewJob({
  make,
  example,
}: {
  readonly make: (entries: Entries) => void;
  readonly example: Entries;
}): JSX.Element {
  const [name, setName] = useState('');
  const start = (entries: Entries) =>
    make({ ...entries, ...(name.trim() === '' ? {} : { name: name.trim() }) });
  return (
    <form
      class="new-job"
      onSubmit={(event) => {
        event.preventDefault();
        start(NONE_OF_EXAMPLE);
      }}
    >
      <h2>A new job</h2>
      <div class="field">
        <label for="new-name">Address</label>
        <p class="hint" id="new-name-hint">
          What you call it: a street, a number. Such as 14 Larkspur Lane.
        </p>
        <input
          id="new-name"
          aria-describedby="new-name-hint"
          type="text"
          autocomplete="off"
          maxLength={200}
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </div>
      <p class="acts">
        <button type="submit">Begin with nothing filled in</button>
        <button type="button" class="plain" onClick={() => start(example)}>
          Begin with the example’s entries
        </button>
      </p>
    </form>
  );
}
