/** What a command says is written to one of these. */
type Outlet = Pick<NodeJS.WriteStream, 'on' | 'listeners'>;

function closedIsFine(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
}

/**
 * Lets whoever reads a command leave early, as `head` and `grep -m1` do: what is said after that is lost, and the command ends with the code that it would
 * have ended with. Any other fault of an outlet is thrown. Asked twice of one outlet, it is let once.
 */
export function mayCloseEarly(...outlets: readonly Outlet[]): void {
  for (const outlet of outlets)
    if (!outlet.listeners('error').includes(closedIsFine)) outlet.on('error', closedIsFine);
}
