import { boxOf, overlap, shapesOf } from './measure.ts';
import { type Element, wordsOf } from './xml.ts';

const nameOf = (shape: Element): string => `${shape.name} ${wordsOf(shape)}`.trim();

/** What is drawn where the sheet does not reach, and would be cut off. */
export const offTheSheet = (root: Element): string[] => {
  const [right, bottom] = [Number(root.attributes.width), Number(root.attributes.height)];
  return shapesOf(root).flatMap((shape) => {
    const box = boxOf(shape);
    const on = !box || (box.left >= 0 && box.top >= 0 && box.right <= right && box.bottom <= bottom);
    return on ? [] : [`${nameOf(shape)} on ${root.attributes['aria-labelledby']}`];
  });
};

/** Words that stand on one another. */
export function overlapping(root: Element): string[] {
  const texts = shapesOf(root).filter(({ name }) => name === 'text');
  return texts.flatMap((one, place) =>
    texts.slice(place + 1).flatMap((other) => {
      const [a, b] = [boxOf(one), boxOf(other)];
      return a && b && overlap(a, b) ? [`${wordsOf(one)} on ${wordsOf(other)}`] : [];
    }),
  );
}
