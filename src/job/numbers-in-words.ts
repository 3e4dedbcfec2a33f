/**
 * Numbers in rising order as they are said, three or more on end by the first and the last.
 * @example numbersInWords([1, 2, 3, 5, 6, 8]) // => '1 to 3, 5, 6 and 8'
 */
export function numbersInWords(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const each of numbers) {
    const run = runs[runs.length - 1];
    if (run && each === (run[run.length - 1] ?? each) + 1) run.push(each);
    else runs.push([each]);
  }
  const said = runs.flatMap((run) =>
    run.length > 2 ? [`${run[0]} to ${run[run.length - 1]}`] : run.map(String),
  );
  const last = said.pop() ?? '';
  return said.length > 0 ? `${said.join(', ')} and ${last}` : last;
}
