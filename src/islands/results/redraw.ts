import { attributeText, held, type Shape } from '../../drawings/svg.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** Is an element drawn such that each of its nodes is one of the shape's children? Words side by side, and no words, make other nodes. */
const isParallel = (element: Element, { children }: Shape): boolean =>
  element.childNodes.length === children.length &&
  (children.length < 2 || children.every((each) => typeof each !== 'string'));

/** A new node that shows a shape, or words. */
function drawn(each: Shape | string): Node {
  if (typeof each === 'string') return document.createTextNode(held(each));
  const element = document.createElementNS(SVG, each.tag);
  // What says that it is SVG it says by being so.
  for (const [name, value] of Object.entries(each.attributes))
    if (name !== 'xmlns') element.setAttribute(name, attributeText(value));
  for (const child of each.children) element.appendChild(drawn(child));
  return element;
}

/**
 * Makes an element that shows one shape show another. What is alike is left as it is: of a drawing of a thousand lines a key often moves
 * none and changes a few words, and to read all of it anew is most of what a phone does at that key.
 */
export function redraw(element: Element, before: Shape, after: Shape): void {
  for (const [name, value] of Object.entries(after.attributes))
    if (before.attributes[name] !== value) element.setAttribute(name, attributeText(value));
  for (const name of Object.keys(before.attributes))
    if (!(name in after.attributes)) element.removeAttribute(name);
  if (!isParallel(element, before)) {
    while (element.lastChild) element.removeChild(element.lastChild);
    for (const child of after.children) element.appendChild(drawn(child));
    return;
  }
  after.children.forEach((child, place) => {
    const node = element.childNodes[place];
    const old = before.children[place];
    if (node === undefined || old === undefined) element.appendChild(drawn(child));
    else if (typeof child === 'string' || typeof old === 'string' || child.tag !== old.tag) {
      if (child !== old) element.replaceChild(drawn(child), node);
    } else redraw(node as Element, old, child);
  });
  for (let extra = element.childNodes.length; extra > after.children.length; extra -= 1)
    element.lastChild?.remove();
}
