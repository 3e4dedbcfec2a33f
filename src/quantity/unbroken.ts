/** No-break space: told so, since on screen it looks like any other. */
const NO_BREAK = '\u00a0';

/**
 * How is a printed amount told where lines are short, so that none ends between a number and its fraction or unit, feet and inches, or "per" and
 * what it is per? A unit of more than eight characters goes to a line of its own where there is no room beside the number.
 *
 * @example unbroken('13 ft 10 1/2 in') // => '13\u00a0ft\u00a010\u00a01/2\u00a0in'
 */
export const unbroken = (amount: string): string =>
  amount
    .replace(/\b(ft|per) (?=\d|in\b|ft)/g, `$1${NO_BREAK}`)
    .replace(/(\d) (?=\S{1,8}(\s|$))/g, `$1${NO_BREAK}`);
