import { hydrate, type JSX } from 'preact';
import { useEffect } from 'preact/hooks';

type Control = HTMLInputElement | HTMLSelectElement;

const isControl = (each: Element): each is Control =>
  each instanceof HTMLSelectElement || (each instanceof HTMLInputElement && each.type === 'text');

/** What the page was built with in a control. */
const built = (control: Control): string =>
  control instanceof HTMLInputElement
    ? control.defaultValue
    : (([...control.options].find((option) => option.defaultSelected) ?? control.options[0])?.value ?? '');

/** Types again what was typed, once the form listens: also where it still stands in its box, since the form does not know of it. */
function typeAgain(typed: readonly (readonly [Control, string])[]): void {
  for (const [control, value] of typed) {
    if (!control.isConnected) continue;
    control.value = value;
    control.dispatchEvent(
      new Event(control instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }),
    );
  }
}

function Then({ act }: { readonly act: () => void }): null {
  useEffect(() => {
    // What was kept has been asked for by now, and stands in the form when the next task begins.
    const later = setTimeout(act);
    return () => clearTimeout(later);
  }, [act]);
  return null;
}

/**
 * Brings a form to life where the page has drawn it, with what was typed into it before: on a poor line the form is there long before its
 * script, and what was typed stays.
 */
export function hydrateAsTyped(form: JSX.Element, root: HTMLElement): void {
  const typed = [...root.querySelectorAll('.entries *')]
    .filter(isControl)
    .filter((control) => control.value !== built(control))
    .map((control) => [control, control.value] as const);
  const act = (): void => typeAgain(typed);
  hydrate(
    <>
      {form}
      <Then act={act} />
    </>,
    root,
  );
}
