import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

export default defineConfig({
  base: './',
  publicDir: 'static',
  plugins: [svelte()],
  build: { outDir: 'dist/app', emptyOutDir: true, target: 'es2022' },
});
