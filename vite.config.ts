import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { shipPolicy } from './scripts/contentSecurityPolicy.mjs';

/**
 * The built page as a server gives it that knows its files: what carries its own hash in its name never changes. A browser
 * that opens it again asks for none of it, and has it compiled.
 */
function keepAssets(): Plugin {
  return {
    name: 'keep-assets',
    configurePreviewServer(server) {
      server.middlewares.use((request, response, next) => {
        if (request.url?.startsWith('/assets/') === true)
          response.setHeader('Cache-Control', 'max-age=31536000, immutable');
        next();
      });
    },
  };
}

export default defineConfig({
  base: './',
  publicDir: 'static',
  plugins: [
    svelte(),
    shipPolicy(),
    keepAssets(),
    // All of the page is kept on the first visit, so that it works where there is no network, as at most wells.
    VitePWA({
      strategies: 'generateSW',
      // A new version waits until the person takes it, or until every window is closed.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Wellcut',
        short_name: 'Wellcut',
        description:
          'Draws a drilled water well cut open, every part at its true depth, and checks whether it will work.',
        display: 'standalone',
        start_url: './',
        scope: './',
        background_color: '#ffffff',
        theme_color: '#ffffff',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,svg,json,woff2}'],
        clientsClaim: true,
        cleanupOutdatedCaches: true,
        inlineWorkboxRuntime: true,
        sourcemap: false,
      },
    }),
  ],
  build: { outDir: 'dist/app', emptyOutDir: true, target: 'es2022' },
});
