/**
 * Which files of the site may an address lead to, as a host of files would say? The file itself; and where none is there by that name,
 * the page of a folder whose slash was left out. What stands behind the question mark is not asked about.
 * @param root where the site begins; ends in a slash
 * @example filesAsked('https://a.example/roof/do/?q=1', 'https://a.example/roof/') // => { file: 'do/index.html', folder: undefined }
 * @example filesAsked('https://a.example/roof/do', 'https://a.example/roof/') // => { file: 'do', folder: 'do/index.html' }
 */
export function filesAsked(
  address: string,
  root: string,
): { readonly file: string; readonly folder: string | undefined } {
  const below = decoded(new URL(address).pathname.slice(new URL(root).pathname.length));
  return below === '' || below.endsWith('/')
    ? { file: `${below}index.html`, folder: undefined }
    : { file: below, folder: `${below}/index.html` };
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
