import { readRecall } from '../../rulebook/export/recall.ts';

/** Why a version is recalled, by what the host last said; undefined where it is not. @example whyRecalled(undefined, '2026.1') // => undefined */
export const whyRecalled = (said: string | undefined, version: string): string | undefined =>
  said === undefined ? undefined : readRecall(said)?.find((each) => each.version === version)?.reason;

/** Asks the host itself, past every cache, which versions are recalled; undefined where it can't be reached, or another answers for it. */
export async function askRecalled(root: string): Promise<string | undefined> {
  try {
    const answer = await fetch(new URL('data/recall.json', root), { cache: 'no-store' });
    const text = answer.ok ? await answer.text() : '';
    return readRecall(text) === undefined ? undefined : text;
  } catch {
    return undefined;
  }
}

/** Puts the stop before everything on the page, or takes it away. The style sheet takes away the answers while it stands. */
export function showRecall(version: string, reason: string | undefined): void {
  const main = document.getElementById('main');
  const there = main?.querySelector('.recalled');
  document.documentElement.toggleAttribute('data-recalled', reason !== undefined);
  if (reason === undefined || !main) {
    there?.remove();
    return;
  }
  const stop = document.createElement('div');
  stop.className = 'caution stop recalled';
  stop.setAttribute('role', 'alert');
  const strong = document.createElement('strong');
  strong.textContent = 'Stop.';
  const words = document.createElement('p');
  words.append(
    strong,
    ` Rulebook ${version} is recalled: ${reason} Work by no figure of this copy, on the screen or on paper. Get the new copy first: “Check now” stands at the foot of the page. What you typed is kept.`,
  );
  stop.append(words);
  if (there) there.replaceWith(stop);
  else main.prepend(stop);
}
