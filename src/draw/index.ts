/** Public face of the drawing: a solved plan becomes a scene, a scene becomes SVG. */
export { draw } from './draw.ts';
export { createDrawer, type Drawer } from './drawer.ts';
export { attributeText, FONT_FAMILY, rootAttributes, toSvg, type SvgOptions } from './svg.ts';
export { A4, LETTER, type Paper } from './paper.ts';
export { THEMES, type Ink } from './theme.ts';
export type { Attributes, Shape, Tag } from './scene.ts';
export type * from './view.ts';
