/** Does something with each of many, a few at a time, in their order. Where one fails none is begun any more. @throws what that one threw */
export async function inLanes<T>(
  many: number,
  all: readonly T[],
  act: (each: T) => Promise<void>,
): Promise<void> {
  let next = 0;
  const lane = async (): Promise<void> => {
    for (let at = next++; at < all.length; at = next++)
      await act(all[at] as T).catch((error: unknown) => {
        next = all.length;
        throw error;
      });
  };
  await Promise.all(Array.from({ length: many }, lane));
}
