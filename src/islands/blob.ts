// By way of an answer: blobs and files of the browsers of 2019 can't be asked what they hold.

/** What is written in a file? */
export const textOf = (blob: Blob): Promise<string> => new Response(blob).text();

/** What does a file hold? */
export const bytesOf = async (blob: Blob): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await new Response(blob).arrayBuffer());
