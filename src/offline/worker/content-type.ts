const types: readonly (readonly [ending: RegExp, type: string])[] = [
  [/\.html$/, 'text/html; charset=utf-8'],
  [/\.js$/, 'text/javascript; charset=utf-8'],
  [/\.css$/, 'text/css; charset=utf-8'],
  [/\.json$/, 'application/json'],
  [/\.webmanifest$/, 'application/manifest+json'],
  [/\.svg$/, 'image/svg+xml'],
  [/\.png$/, 'image/png'],
  [/\.csv$/, 'text/csv; charset=utf-8'],
  [/\.(txt|yaml|conf|sh|pf_fragment)$/, 'text/plain; charset=utf-8'],
];

/**
 * What a file is, by the end of its name, for one that came in a parcel: the host did not say it then.
 * @example contentType('do/index.html') // => 'text/html; charset=utf-8'
 */
export const contentType = (file: string): string =>
  types.find(([ending]) => ending.test(file))?.[1] ?? 'application/octet-stream';
