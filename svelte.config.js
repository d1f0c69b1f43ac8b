import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

/** Svelte reads this for the page and the checker alike. */
export default { preprocess: vitePreprocess() };
