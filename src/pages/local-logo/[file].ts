import { local } from '../../components/rulebook.ts';

/** The pictures of agencies. */
export const getStaticPaths = () =>
  (local?.agencies ?? []).flatMap(({ id, picture }) =>
    picture ? [{ params: { file: `${id}-${picture.name}` }, props: { bytes: picture.bytes } }] : [],
  );

export const GET = ({ props: { bytes } }: { readonly props: { readonly bytes: Uint8Array<ArrayBuffer> } }) =>
  new Response(bytes);
