/** A page that lies in the background paints nothing; there work goes on after so long, in milliseconds. */
const UNPAINTED = 100;

/** Does some work once what is drawn so far is painted, or soon where nothing is painted. */
export function afterPaint(work: () => void): void {
  const unpainted = setTimeout(() => {
    cancelAnimationFrame(frame);
    work();
  }, UNPAINTED);
  const frame = requestAnimationFrame(() => {
    clearTimeout(unpainted);
    // A timer has its turn only once the frame is painted.
    setTimeout(work);
  });
}
