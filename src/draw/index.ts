/** Public face of the drawing: a solved plan becomes a scene, a scene becomes SVG. */
export { draw } from './drawAll.ts';
export { drawSheet } from './draw.ts';
export { drawPortrait, type Portrait, type PortraitView } from './portrait.ts';
export { createDrawer, type Drawer } from './drawer.ts';
export { attributeText, FONT_FAMILY, rootAttributes, toSvg, type SvgOptions } from './svg.ts';
export { A3, A4, landscape, LEGAL, LETTER, TABLOID, type Paper } from './paper.ts';
export { SPARE_ELSEWHERE } from './type/measure.ts';
export { THEMES, type Ink } from './theme.ts';
export { windowRoom, type WindowRoom } from './section/frame.ts';
export { LEAST_SPAN, spanWithin } from './section/window.ts';
export type { Attributes, Shape, Tag } from './scene.ts';
export { outsideWell, type AskedView } from './wholeView.ts';
export type * from './view.ts';
