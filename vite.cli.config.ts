import { builtinModules } from 'node:module';
import { defineConfig } from 'vite';

/** The command line for Node, and the library for Node, a browser or a worker: one file each entry, and what they share. */
export default defineConfig({
  publicDir: false,
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/node',
    emptyOutDir: true,
    minify: false,
    rolldownOptions: {
      input: {
        wellcut: 'src/cli/main.ts',
        batchWorker: 'src/cli/batch/worker.ts',
        lib: 'src/lib/index.ts',
        choosing: 'src/lib/choosing.ts',
      },
      output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: 'shared/[name].js' },
      external: ['@resvg/resvg-js', ...builtinModules, ...builtinModules.map((name) => `node:${name}`)],
    },
  },
  ssr: { noExternal: true, external: ['@resvg/resvg-js'] },
});
