/** A page that lies in the background paints nothing; there work goes on after so long, in milliseconds. */
const UNPAINTED = 100;

/** Does some work once what is drawn so far is painted, or soon where nothing is painted. */
export function afterPaint(work: () => void): void {
  let done = false;
  const once = (): void => {
    if (done) return;
    done = true;
    clearTimeout(unpainted);
    work();
  };
  const unpainted = setTimeout(once, UNPAINTED);
  // A timer has its turn only once the frame is painted.
  requestAnimationFrame(() => setTimeout(once));
}
