import { preview } from 'astro';

const server = await preview({ logLevel: 'error' });
const address = `http://${server.host ?? 'localhost'}:${server.port}/`;
console.log(`Heel to Ridge is at ${address}`);
console.log(`The example job stands worked at ${address}plan/`);
console.log('Ctrl+C ends it.');
await server.closed();
