import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { shipPolicy } from './scripts/contentSecurityPolicy.mjs';

export default defineConfig({
  base: './',
  publicDir: 'static',
  plugins: [svelte(), shipPolicy()],
  build: { outDir: 'dist/app', emptyOutDir: true, target: 'es2022' },
});
