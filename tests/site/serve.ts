import { servePlainly } from './plain-server.ts';

/** Serves the built site to the tests in browsers: `node tests/site/serve.ts PORT`. */
const { at } = await servePlainly('dist', '/', Number(process.argv[2]));
console.log(`The built site is at ${at}`);
