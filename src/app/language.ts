/** The language of the page: who says anything on it takes its words from here. */
export { en } from '../words/en/index.ts';
