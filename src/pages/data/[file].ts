import { type DataFile, dataFiles, sha256 } from '../../components/data-files.ts';

const sums = `${dataFiles.map(({ name, text }) => `${sha256(text)}  ${name}`).join('\n')}\n`;

/** The files of data, and their sums in the form that "sha256sum -c" reads. */
export const getStaticPaths = () =>
  [...dataFiles, { name: 'SHA256SUMS.txt', type: 'text/plain', what: '', text: sums }].map((each) => ({
    params: { file: each.name },
    props: each,
  }));

export const GET = ({ props: { type, text } }: { readonly props: DataFile }) =>
  new Response(text, { headers: { 'content-type': type } });
