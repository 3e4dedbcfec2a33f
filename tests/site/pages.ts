import { readdirSync } from 'node:fs';

/** Every page of the built site, by its address. */
export const everyPage: readonly string[] = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('index.html'))
  .map((name) => `/${name.replaceAll('\\', '/').replace(/index\.html$/, '')}`)
  .sort();

/** Pages of one kind are made from one template; one of each kind is looked at closely. */
export const oneOfEach: readonly string[] = [
  '/',
  '/plan/',
  '/plan/fill-log/',
  '/plan/before/',
  '/plan/ways-in/',
  '/plan/hose-marks/',
  '/plan/heat/',
  '/plan/receipt/',
  '/plan/photographs/',
  '/plan/jobs/',
  '/plan/patch-template/',
  '/cautions/before/',
  '/cards/filling-through-roof-holes/',
  '/cards/all/',
  '/terms/',
  '/calculators/hose-marks/',
  '/calculators/patch-layers/',
  '/calculators/',
  '/calculators/ceiling-load/',
  '/calculators/ceiling-load/example/',
  '/do/',
  '/do/filling-through-roof-holes/',
  '/know/the-taper-and-r/',
  '/safety/electricity/',
  '/trouble/ceiling-bows/',
  '/train/lessons/',
  '/train/answers/',
  '/rules/',
  '/rules/ceiling.board.limit/',
  '/sources/',
  '/search/?q=ladder',
];
