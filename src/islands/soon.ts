/** Does some work once the keys and scrolls that came before it have had their turn: a message has no timer's delay. */
export function soon(work: () => void): void {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = work;
  port2.postMessage(undefined);
}
