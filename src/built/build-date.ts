import { execFileSync } from 'node:child_process';

/**
 * The date that SOURCE_DATE_EPOCH tells, in seconds since 1970, so that a build can be made again; undefined where it is not set.
 * @throws Error for what is no such number, or lies in a year that a zip can't hold.
 * @example dateTold('1795723200')?.toISOString() // => '2026-11-26T20:00:00.000Z'
 */
export function dateTold(seconds: string | undefined): Date | undefined {
  if (seconds === undefined) return undefined;
  const date = new Date(Number(seconds) * 1000);
  if (!/^\d+$/.test(seconds) || !(date.getUTCFullYear() >= 1980 && date.getUTCFullYear() < 2100))
    throw new Error(
      `found SOURCE_DATE_EPOCH "${seconds}", expected seconds since 1970, of a year from 1980 to 2099`,
    );
  return date;
}

/**
 * The day that every page bears as that of its build: SOURCE_DATE_EPOCH, else the day of the last commit, so that the same sources make
 * the same pages whenever they are built; today where neither is known.
 */
export function buildDay(): string {
  const date = dateTold(process.env.SOURCE_DATE_EPOCH) ?? dateTold(lastCommit()) ?? new Date();
  return date.toISOString().slice(0, 10);
}

function lastCommit(): string | undefined {
  try {
    const said = execFileSync('git', ['log', '-1', '--format=%ct'], { stdio: ['ignore', 'pipe', 'ignore'] });
    return said.toString().trim() || undefined;
  } catch {
    return undefined;
  }
}
