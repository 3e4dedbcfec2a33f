import { recipes } from '../../components/recipes.ts';

/** The recipes as files. */
export const getStaticPaths = () =>
  Object.entries(recipes).map(([file, text]) => ({ params: { file }, props: { text } }));

export const GET = ({ props: { text } }: { readonly props: { readonly text: string } }) =>
  new Response(text, { headers: { 'content-type': 'text/plain' } });
