/** The language of the drawing and of what lies under it: a page that opens waits for no other words. */
export { first as en } from '../words/en/first.ts';
