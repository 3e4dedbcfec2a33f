/**
 * What phones of 2019 lack of the language's own library, and pages use. Each stands in only where the browser has nothing of that
 * name, and does what the standard says for the uses here; none looks at species, proxies or odd receivers.
 */
export const standIns = {
  arrayAt<T>(this: readonly T[], place: number): T | undefined {
    const at = Math.trunc(place) || 0;
    return this[at < 0 ? this.length + at : at];
  },
  stringAt(this: string, place: number): string | undefined {
    const at = Math.trunc(place) || 0;
    return this[at < 0 ? this.length + at : at];
  },
  findLast<T>(
    this: readonly T[],
    found: (each: T, place: number, all: readonly T[]) => unknown,
  ): T | undefined {
    for (let place = this.length - 1; place >= 0; place -= 1) {
      const each = this[place] as T;
      if (found(each, place, this)) return each;
    }
    return undefined;
  },
  /** For words in place of words; a pattern is replaced as its own flag says. */
  replaceAll(this: string, what: string | RegExp, by: string): string {
    return typeof what === 'string' ? this.split(what).join(by) : this.replace(what, by);
  },
  hasOwn(of: object, name: PropertyKey): boolean {
    // biome-ignore lint/suspicious/noPrototypeBuiltins: it stands in for what would be used instead
    return Object.prototype.hasOwnProperty.call(of, name);
  },
  replaceChildren(this: Element, ...children: (Node | string)[]): void {
    while (this.lastChild) this.removeChild(this.lastChild);
    this.append(...children);
  },
};

const places: readonly [object | undefined, string, unknown][] = [
  [Array.prototype, 'at', standIns.arrayAt],
  [String.prototype, 'at', standIns.stringAt],
  [Array.prototype, 'findLast', standIns.findLast],
  [String.prototype, 'replaceAll', standIns.replaceAll],
  [Object, 'hasOwn', standIns.hasOwn],
  [
    typeof Element === 'undefined' ? undefined : Element.prototype,
    'replaceChildren',
    standIns.replaceChildren,
  ],
];

for (const [of, name, value] of places)
  if (of && !(name in of)) Object.defineProperty(of, name, { value, writable: true, configurable: true });
