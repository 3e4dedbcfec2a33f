import { preview } from 'astro';

const at = process.argv.indexOf('--port');
const port = at > 0 ? Number(process.argv[at + 1]) : undefined;

const server = await preview({ logLevel: 'error', ...(port ? { server: { port } } : {}) });
const address = `http://${server.host ?? 'localhost'}:${server.port}/`;
console.log(`Heel to Ridge is at ${address}`);
console.log(`The example job stands worked at ${address}plan/`);
console.log('Ctrl+C ends it.');
await server.closed();
