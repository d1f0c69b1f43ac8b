/** The details of a sheet: the well top, the pump end, the lens. */
export type { DetailFrame, DetailScene } from './contract.ts';
export { drawLens } from './lens.ts';
export { drawPumpEnd } from './pumpEnd.ts';
export { drawWellTop } from './wellTop.ts';
