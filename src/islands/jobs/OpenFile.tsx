import type { JSX } from 'preact';

/** Opens a file; nothing leaves the phone. */
export const OpenFile = ({
  id,
  label,
  take,
}: {
  readonly id: string;
  readonly label: string;
  readonly take: (file: File) => void;
}): JSX.Element => (
  <p class="open-file needs-script">
    <input
      id={id}
      type="file"
      accept="application/json,.json,application/zip,.zip"
      class="visually-hidden"
      onChange={(event) => {
        const [file] = event.currentTarget.files ?? [];
        event.currentTarget.value = '';
        if (file) take(file);
      }}
    />
    <label class="button" for={id}>
      {label}
    </label>
  </p>
);
