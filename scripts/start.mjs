/** `npm start`: installs what is missing, builds the page, serves it and prints the address. */
import './ensure-packages.mjs';

const { build, preview } = await import('vite');
const port = Number(process.env.PORT ?? 4173);

await build({ logLevel: 'warn' });
const server = await preview({ logLevel: 'warn', preview: { port, host: '127.0.0.1' }, build: { outDir: 'dist/app' } });
const address = server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${port}/`;
console.log(`Wellcut is at ${address}   (Ctrl+C stops it)`);
