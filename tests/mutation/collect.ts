/** A test as it was declared: where, under which titles, and what it runs. */
export interface Collected {
  readonly id: string;
  readonly file: string;
  readonly title: string;
  readonly run: () => unknown;
}

type Body = (...given: readonly never[]) => unknown;

let file = '';
let titles: readonly string[] = [];
let found: Collected[] = [];
let leftOut: ReadonlySet<string> = new Set();

/** The tests that a file declares while `load` imports it; a group whose title is left out is not even begun. */
export async function collectFrom(
  name: string,
  without: ReadonlySet<string>,
  load: () => Promise<unknown>,
): Promise<readonly Collected[]> {
  [file, titles, found, leftOut] = [name, [], [], without];
  await load();
  return found;
}

const shown = (value: unknown): string => (typeof value === 'object' ? JSON.stringify(value) : String(value));

/** The title of one row of a table: `%s` takes the row’s next value, `$name` its entry of that name. */
function titleOf(title: string, row: unknown): string {
  const left = Array.isArray(row) ? [...row] : [row];
  const named = Array.isArray(row) ? {} : ((row ?? {}) as Record<string, unknown>);
  return title
    .replace(/%[sdifjo]/g, () => shown(left.shift()))
    .replace(/\$(\w+)/g, (whole, key: string) => (key in named ? shown(named[key]) : whole));
}

function one(title: string, run: Body): void {
  const whole = [...titles, title].join(' > ');
  found.push({ id: `${file}#${found.length} ${whole}`, file, title: whole, run });
}

function group(title: string, run: Body): void {
  if (leftOut.has(title)) return;
  titles = [...titles, title];
  run();
  titles = titles.slice(0, -1);
}

/** Where every row is a list, each is the arguments; in any other table each is the one argument. */
const each =
  (declare: (title: string, run: Body) => void) =>
  (table: readonly unknown[]) =>
  (title: string, run: Body): void => {
    const lists = table.every((row) => Array.isArray(row));
    for (const row of table) {
      const given = (lists ? row : [row]) as never[];
      declare(titleOf(title, row), () => run(...given));
    }
  };

/** Of a test’s arguments the last that is a function is what it runs; limits of time are the run’s own affair. */
const declared =
  (declare: (title: string, run: Body) => void) =>
  (title: string, ...rest: readonly unknown[]): void => {
    const run = rest.find((each): each is Body => typeof each === 'function');
    if (run) declare(title, run);
  };

export const test = Object.assign(declared(one), { each: each(one) });
export const describe = Object.assign(declared(group), { each: each(group) });
