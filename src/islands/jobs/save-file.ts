/** Long enough for any browser to have begun, and short for what is held meanwhile. */
const UNTIL_LET_GO = 60_000;

/** Hands a text, or bytes, over as a file. */
export function saveFile(
  name: string,
  content: string | Uint8Array<ArrayBuffer>,
  type = 'application/json',
): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  // Some browsers fetch the file only later; one that is let go at once would come out empty.
  setTimeout(() => URL.revokeObjectURL(link.href), UNTIL_LET_GO);
}
