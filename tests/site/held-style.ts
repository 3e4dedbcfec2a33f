import { createHash } from 'node:crypto';
import { type Element, elementsIn } from '../../src/built/html.ts';

/** The sum by which a policy allows a style, as browsers take it. */
export const sumOf = (style: Element): string =>
  `sha256-${createHash('sha256').update(textOf(style)).digest('base64')}`;

const textOf = (style: Element): string =>
  style.childNodes.map((node) => ('value' in node ? node.value : '')).join('');

/** The styles that stand in a page. */
export const heldStyles = (html: string): Element[] =>
  elementsIn(html).filter(({ tagName }) => tagName === 'style');
