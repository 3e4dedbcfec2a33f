import { Fragment, type JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Entries, entryAt, listAt, textAt } from '../../calc/declare/entries.ts';
import type { Field, Fields, ListField } from '../../calc/declare/field.ts';
import type { FieldProblem } from '../../calc/declare/read-fields.ts';
import { oneOf } from '../../calc/declare/which-of-list.ts';
import { isBareNumber } from '../../quantity/parse.ts';
import { unbroken } from '../../quantity/unbroken.ts';
import { units, usualUnit } from '../../quantity/units.ts';
import { still } from '../still.ts';
import type { SetEntry } from '../use-entries.ts';
import { afterPress } from './after-press.ts';

/** What holds for every box of a form: nothing is offered that was typed elsewhere, and a measure is no word to be spelled. */
export const ofEveryBox = { autocomplete: 'off', spellcheck: false } as const;

export interface FormState {
  readonly entries: Entries;
  readonly set: SetEntry;
  readonly leave: (way: string) => void;
  readonly problems: readonly FieldProblem[];
}

/** The id of a field's box, made from the way to it. */
export const boxId = (way: string): string => `field-${way.replace(/\./g, '-')}`;

/** A set of fields, each with its box. */
export const FieldsForm = ({
  fields,
  way = [],
  ...state
}: FormState & { readonly fields: Fields; readonly way?: readonly string[] }): JSX.Element => (
  <>
    {Object.entries(fields).map(([name, field]) => (
      <FieldInput key={name} field={field} way={[...way, name]} {...state} />
    ))}
  </>
);

interface FieldProps extends FormState {
  readonly field: Fields[string];
  readonly way: readonly string[];
}

/** Nothing of a field is another: what stands in it, who is told of a change, or a problem anywhere. */
const sameField = (before: FieldProps, after: FieldProps): boolean =>
  before.field === after.field &&
  before.set === after.set &&
  before.leave === after.leave &&
  before.problems.length + after.problems.length === 0 &&
  entryAt(before.entries, before.way) === entryAt(after.entries, after.way) &&
  String(before.way) === String(after.way);

/** The box that is being typed in, with its text: until it is left it holds just that, since what is written into a box can't be undone in it. */
let inHand = '';

/** One field: its name, what to measure, its box, what is wrong with what was typed. */
const FieldInput = still(function Field({ field, way, ...state }: FieldProps): JSX.Element {
  if (field.kind === 'group') {
    return (
      <fieldset class="group">
        <Heads {...field} />
        <FieldsForm fields={field.of} way={way} {...state} />
      </fieldset>
    );
  }
  if (field.kind === 'list') return <ListInput field={field} way={way} {...state} />;

  const name = way.join('.');
  const id = boxId(name);
  const problem = state.problems.find((each) => each.field === name);
  const unit = field.kind === 'quantity' ? field.beside : undefined;
  const text = textAt(state.entries, way);
  const value = printed(text, field);
  const listed = field.kind === 'choice' && field.choices.includes(value);
  const none = listed ? '' : value;
  const shared = {
    id,
    name,
    'aria-describedby': `${id}-hint${problem ? ` ${id}-problem` : ''}${unit ? ` ${id}-unit` : ''}`,
    'aria-invalid': problem && ('true' as const),
  };
  return (
    // Paper shows what was typed as words: a box cuts off what is longer than it.
    <div class={problem ? 'field wrong' : 'field'} data-typed={value}>
      <label for={id}>
        {unbroken(field.label)}
        {field.optional === 'if any' ? <span class="optional"> (if any)</span> : null}
      </label>
      <p class="hint" id={`${id}-hint`}>
        {unbroken(field.kind === 'choice' ? field.hint : `${field.hint} For example ${field.example}.`)}
      </p>
      {problem ? (
        <p class="problem" id={`${id}-problem`}>
          {unbroken(`Found ${problem.found}; expected ${problem.expected}.`)}
        </p>
      ) : null}
      {field.kind === 'choice' ? (
        <select
          {...shared}
          value={value}
          onChange={(event) => {
            state.set(way, event.currentTarget.value);
            // A choice is whole at once; a word that is typed is not before its box is left.
            state.leave(name);
          }}
        >
          {field.optional || !listed ? <option value={none}>{none}</option> : null}
          {/* A page that is sent knows the chosen one by its value. */}
          {field.choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      ) : (
        <span class="box">
          <span class="typed">
            <input
              {...shared}
              inputMode={
                field.kind === 'year' || field.kind === 'count'
                  ? 'numeric'
                  : field.kind === 'quantity' && field.beside && !field.negative
                    ? 'decimal' // Some phones' decimal keys have no minus.
                    : undefined
              }
              maxLength={200}
              value={id + text === inHand ? text : value}
              onInput={({ currentTarget: box }) => {
                // A page also enters what was typed before it ran.
                if (box === document.activeElement) inHand = id + box.value;
                state.set(way, box.value);
              }}
              onBlur={({ currentTarget: box }) => {
                inHand = '';
                // Where it can be read again before it counts.
                if (unit && isBareNumber(box.value)) state.set(way, `${box.value.trim()} ${unit}`);
                box.value = printed(box.value, field);
                afterPress(() => state.leave(name));
              }}
            />
          </span>
          {unit ? (
            <span class="unit" id={`${id}-unit`}>
              {units[unit].sign}
            </span>
          ) : null}
        </span>
      )}
    </div>
  );
}, sameField);

/** What stands above several boxes. */
const Heads = ({ label, hint }: Pick<Field, 'label' | 'hint'>): JSX.Element => (
  <>
    <legend>{unbroken(label)}</legend>
    <p class="hint">{unbroken(hint)}</p>
  </>
);

/** A box shows its unit as everything else does, also where its name was typed, which has no raised figures: lb/ft3 as lb/ft³. */
function printed(typed: string, field: Field): string {
  if (field.kind !== 'quantity') return typed;
  const unit = field.beside ?? usualUnit[field.dimension];
  return unit && /[23]/.test(unit) ? typed.replace(unit, units[unit].sign) : typed;
}

/** The second tap of a glove comes within so long, in milliseconds. */
const SECOND_TAP = 500;

/** Rows of one kind. What is taken off can be put back, and only what is asked for is taken off. */
function ListInput({
  field,
  way,
  ...state
}: FormState & { readonly field: ListField; readonly way: readonly string[] }): JSX.Element {
  const rows = listAt(state.entries, way);
  const name = way.join('.');
  const id = boxId(name);
  const called = (place: number): string => oneOf(field, place);
  const [off, takeOff] = useState({
    place: 0,
    at: -SECOND_TAP,
    before: rows,
    left: [] as readonly Entries[],
  });
  // Where the focus goes once the rows are drawn.
  const next = useRef('');
  useEffect(() => {
    if (next.current !== '') document.querySelector<HTMLElement>(next.current)?.focus();
    next.current = '';
  });
  const undo = (place: number) =>
    rows === off.left && place === off.place ? (
      <button
        type="button"
        class="plain"
        onClick={() => {
          next.current = `#${id}-${place}`;
          state.set(way, off.before);
        }}
      >
        Undo: put {called(place)} back
      </button>
    ) : null;
  return (
    <fieldset class="list" id={id} tabIndex={-1}>
      <Heads {...field} />
      {rows.map((_, place) => (
        <Fragment key={place}>
          {undo(place)}
          {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would be a group of its own on paper too, with a head */}
          <div
            class="row"
            id={`${id}-${place}`}
            role="group"
            aria-label={called(place)}
            tabIndex={-1}
            onFocusOut={({ currentTarget, relatedTarget }) => {
              if (!currentTarget.contains(relatedTarget as Node | null))
                afterPress(() => state.leave(`${name}.${place}`));
            }}
          >
            <FieldsForm fields={field.of} way={[...way, String(place)]} {...state} />
            <button
              type="button"
              onClick={({ timeStamp: at }) => {
                // The next row is under the finger now.
                if (at - off.at < SECOND_TAP) return;
                const left = rows.filter((__, other) => other !== place);
                takeOff({ place, at, before: rows, left });
                next.current = `#${id}-${left[place] ? place : 'add'}`;
                state.set(way, left);
              }}
            >
              Remove {called(place)}
            </button>
          </div>
        </Fragment>
      ))}
      {undo(rows.length)}
      <p role="status">{rows === off.left ? `Removed: ${called(off.place)}. Left: ${rows.length}.` : ''}</p>
      {rows.length < field.most ? (
        <button
          type="button"
          id={`${id}-add`}
          onClick={() => {
            next.current = `#${id}-${rows.length} [name]`;
            state.set(way, [...rows, blank(field.of)], `${name}.${rows.length}`);
          }}
        >
          Add {field.one}
        </button>
      ) : null}
    </fieldset>
  );
}

/** A new entry of a list: choices that must be made at their first, the rest empty. */
const blank = (fields: Fields): Entries =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [
      name,
      field.kind === 'choice' && !field.optional ? field.choices[0] : '',
    ]),
  );
