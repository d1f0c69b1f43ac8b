/** What others may import: read a plan, solve it, draw it. */
export * from '../model/index.ts';
export { draw, toSvg } from '../draw/index.ts';
export type { Scene, View } from '../draw/index.ts';
