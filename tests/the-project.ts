import { loadProject } from '../src/rulebook/project.ts';

let read: ReturnType<typeof loadProject> | undefined;

/** The project's rulebook, read once for all tests of a worker: none of them changes it, and to read it anew for each file took a fifth of their time. */
export function theProject(): ReturnType<typeof loadProject> {
  read ??= loadProject();
  return read;
}
