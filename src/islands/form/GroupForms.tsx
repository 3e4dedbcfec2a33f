import type { JSX } from 'preact';
import type { Fields } from '../../calc/declare/field.ts';
import { FieldsForm, type FormState, ofEveryBox } from './FieldInput.tsx';

const BOXES = 'input, select';

/** Enter, which is also the last key of a phone's keyboard, goes on from the last box of a group to the first of the next. */
function onward(event: JSX.TargetedKeyboardEvent<HTMLFormElement>): void {
  // A list to choose from opens at Enter in some browsers.
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  const form = event.currentTarget;
  const isLast = [...form.querySelectorAll(BOXES)].pop() === event.target;
  if (!isLast) return;
  for (let next = form.nextElementSibling; next; next = next.nextElementSibling) {
    // Behind the last group stand buttons, and the box that takes a file.
    const box = next instanceof HTMLFormElement ? next.querySelector<HTMLElement>(BOXES) : null;
    if (!box) continue;
    event.preventDefault();
    box.focus();
    return;
  }
}

/**
 * The groups of a long form, each a form of its own: at every key a browser goes through all boxes of the form that it stands in, to offer
 * what it could fill in, and of a hundred boxes that takes longer than the answer.
 */
export const GroupForms = ({ fields, ...state }: FormState & { readonly fields: Fields }): JSX.Element => (
  <>
    {Object.entries(fields).map(([name, field]) => (
      <form key={name} {...ofEveryBox} onKeyDown={onward} onSubmit={(event) => event.preventDefault()}>
        <FieldsForm fields={{ [name]: field }} {...state} />
      </form>
    ))}
  </>
);
