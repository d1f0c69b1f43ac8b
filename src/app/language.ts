/** The language of what stands beside the drawing: who says anything there takes its words from here. */
export { en } from '../words/en/index.ts';
