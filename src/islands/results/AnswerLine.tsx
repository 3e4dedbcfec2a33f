import type { JSX } from 'preact';
import { unbroken } from '../../quantity/unbroken.ts';

/** The answer in large letters under its name; no line ends between a number and its unit. Who listens is told it elsewhere. */
export const AnswerLine = ({ of, words }: { readonly of: string; readonly words: string }): JSX.Element => (
  <p class="answer">
    <span class="label">{of}</span> <output aria-live="off">{unbroken(words)}</output>
  </p>
);
