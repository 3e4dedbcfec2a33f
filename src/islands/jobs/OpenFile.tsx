import type { JSX } from 'preact';

/** Opens a file; nothing leaves the phone. */
export const OpenFile = ({
  id,
  label,
  take,
}: {
  readonly id: string;
  readonly label: string;
  readonly take: (text: string) => void;
}): JSX.Element => (
  <p class="open-file">
    <input
      id={id}
      type="file"
      accept="application/json,.json"
      class="visually-hidden"
      onChange={async (event) => {
        const [file] = event.currentTarget.files ?? [];
        event.currentTarget.value = '';
        if (file) take(await file.text());
      }}
    />
    <label class="button" for={id}>
      {label}
    </label>
  </p>
);
