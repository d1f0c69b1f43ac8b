/**
 * Inks of the themes. The first group is checked by a test that recomputes contrast on every fill and the
 * distance of colours under three kinds of colour blindness; fills and shades only help the eye along: what they say,
 * hatch, edge and words say too.
 */
import type { View } from './view.ts';

/** A round body seen from the side: a few flat strips and an edge. */
export interface Shade {
  readonly light: string;
  readonly mid: string;
  readonly dark: string;
  readonly edge: string;
}

export type GroundName = 'soil' | 'clay' | 'sand' | 'gravel' | 'rock';

export interface GroundInk {
  readonly fill: string;
  readonly hatch: string;
}

export interface Ink {
  readonly paper: string;
  readonly panel: string;
  /** Text, and what is cut. */
  readonly ink: string;
  /** Second lines. */
  readonly ink2: string;
  /** Leaders, dimensions, ticks. */
  readonly hair: string;
  /** Faint rules: borders of labels, links between section and details. Never needed to understand. */
  readonly rule: string;
  readonly static: string;
  readonly pumping: string;
  readonly frost: string;
  readonly casing: string;
  readonly dropPipe: string;
  readonly wire: string;
  readonly rope: string;
  readonly pump: string;
  readonly danger: string;
  /** The number on a danger's octagon. */
  readonly onDanger: string;
  readonly warning: string;
  /** Number and outline of a warning's triangle. */
  readonly onWarning: string;
  readonly note: string;
  /** Allowed band. */
  readonly allowed: string;
  readonly grass: string;
  readonly ground: Readonly<Record<GroundName, GroundInk>>;
  readonly water: string;
  readonly waterEdge: string;
  readonly frostFill: string;
  readonly snow: string;
  readonly grout: string;
  readonly gravelPack: string;
  /** Inside of casing and hole where there is no water. */
  readonly air: string;
  readonly pumpBody: Shade;
  readonly motorBody: Shade;
  readonly pipeBody: Shade;
  readonly metalPipe: Shade;
  readonly brass: Shade;
  readonly steel: Shade;
  readonly castIron: Shade;
  readonly rubber: Shade;
  /** Tape, ties, arms of an arrestor: thin black things. */
  readonly tape: string;
}

const light: Ink = {
  paper: '#FFFFFF',
  panel: '#F4F1EA',
  ink: '#1E2326',
  ink2: '#4A5358',
  hair: '#666F74',
  rule: '#CFD4D6',
  static: '#164372',
  pumping: '#AB4523',
  frost: '#1F7A72',
  casing: '#363A43',
  dropPipe: '#456A53',
  wire: '#780000',
  rope: '#7A6A06',
  pump: '#6A52B3',
  danger: '#B3261E',
  onDanger: '#FFFFFF',
  warning: '#F2B233',
  onWarning: '#1E2326',
  note: '#1F5FA8',
  allowed: '#2B6B46',
  grass: '#4E6B2F',
  ground: {
    soil: { fill: '#E9DCC3', hatch: '#6B5433' },
    clay: { fill: '#EADBCF', hatch: '#7A4A2E' },
    sand: { fill: '#F3E8C8', hatch: '#75601F' },
    gravel: { fill: '#E8E2D2', hatch: '#5F5B4C' },
    rock: { fill: '#DCDEDD', hatch: '#4E5659' },
  },
  water: '#A6CBE7',
  waterEdge: '#3E7CB0',
  frostFill: '#DDF0F4',
  snow: '#FFFFFF',
  grout: '#CBC3B4',
  gravelPack: '#EFE6CE',
  air: '#FBFAF7',
  pumpBody: { light: '#C9BEE8', mid: '#9585CC', dark: '#6A52B3', edge: '#3B2D70' },
  motorBody: { light: '#BDB3DC', mid: '#8071B4', dark: '#5A479A', edge: '#33275F' },
  pipeBody: { light: '#8DAA98', mid: '#456A53', dark: '#294335', edge: '#1B2E24' },
  metalPipe: { light: '#E4E8EA', mid: '#B4BEC4', dark: '#87939A', edge: '#3F474C' },
  brass: { light: '#F0D79B', mid: '#D6AE5C', dark: '#B0873A', edge: '#5E4513' },
  steel: { light: '#E4E8EA', mid: '#B9C2C7', dark: '#8C979D', edge: '#3F474C' },
  castIron: { light: '#9AA3AB', mid: '#727C85', dark: '#555E67', edge: '#23282D' },
  rubber: { light: '#5A5F63', mid: '#3A3E41', dark: '#25282A', edge: '#151718' },
  tape: '#1A1D1F',
};

const dark: Ink = {
  paper: '#14181B',
  panel: '#1E2428',
  ink: '#ECEFF1',
  ink2: '#B4BEC4',
  hair: '#8B979E',
  rule: '#3A444A',
  static: '#A7B7E3',
  pumping: '#EB9F50',
  frost: '#2AAA98',
  casing: '#98A0A0',
  dropPipe: '#C5E5C3',
  wire: '#E28266',
  rope: '#FECD3B',
  pump: '#B580FB',
  danger: '#FF8A80',
  onDanger: '#14181B',
  warning: '#FFC24B',
  onWarning: '#14181B',
  note: '#7DB8FF',
  allowed: '#7CCB9B',
  grass: '#8FB36A',
  ground: {
    soil: { fill: '#3A3226', hatch: '#D9BF91' },
    clay: { fill: '#3D2E26', hatch: '#E0AF8E' },
    sand: { fill: '#3B3620', hatch: '#DCC66F' },
    gravel: { fill: '#33312A', hatch: '#C9C4B0' },
    rock: { fill: '#2B3033', hatch: '#BAC4C8' },
  },
  water: '#24496A',
  waterEdge: '#6FA8DC',
  frostFill: '#17343C',
  snow: '#C9D8DE',
  grout: '#4A473F',
  gravelPack: '#454029',
  air: '#101315',
  pumpBody: { light: '#C9A8FC', mid: '#9468D6', dark: '#6C46A8', edge: '#E3D3FE' },
  motorBody: { light: '#B295E4', mid: '#7F59BC', dark: '#5B3B92', edge: '#D9C6FA' },
  pipeBody: { light: '#C5E5C3', mid: '#6E9A75', dark: '#3F6249', edge: '#DDF2DB' },
  metalPipe: { light: '#CDD5D9', mid: '#8E9AA1', dark: '#5E6A71', edge: '#E4EAED' },
  brass: { light: '#E5C57A', mid: '#B08B3F', dark: '#7C6128', edge: '#F3DFAE' },
  steel: { light: '#CDD5D9', mid: '#8E9AA1', dark: '#5E6A71', edge: '#E4EAED' },
  castIron: { light: '#8C979E', mid: '#616C73', dark: '#434C52', edge: '#C3CCD1' },
  rubber: { light: '#7A8287', mid: '#565E63', dark: '#3B4246', edge: '#BFC8CD' },
  tape: '#DDE3E6',
};

/** One body of the print theme: white with a light grey side, black edges. No fill is darker than 12 %. */
const drawn: Shade = { light: '#FFFFFF', mid: '#F4F4F4', dark: '#E3E3E3', edge: '#000000' };
const BLACK = '#000000';
const WHITE = '#FFFFFF';

const print: Ink = {
  paper: WHITE,
  panel: WHITE,
  ink: BLACK,
  ink2: '#333333',
  hair: '#555555',
  rule: '#AAAAAA',
  static: BLACK,
  pumping: BLACK,
  frost: BLACK,
  casing: BLACK,
  dropPipe: BLACK,
  wire: BLACK,
  rope: BLACK,
  pump: BLACK,
  danger: BLACK,
  onDanger: WHITE,
  warning: WHITE,
  onWarning: BLACK,
  note: BLACK,
  allowed: BLACK,
  grass: BLACK,
  ground: {
    soil: { fill: WHITE, hatch: '#555555' },
    clay: { fill: WHITE, hatch: '#555555' },
    sand: { fill: WHITE, hatch: '#555555' },
    gravel: { fill: WHITE, hatch: '#555555' },
    rock: { fill: WHITE, hatch: '#555555' },
  },
  water: '#E5E5E5',
  waterEdge: BLACK,
  frostFill: '#F4F4F4',
  snow: WHITE,
  grout: '#E3E3E3',
  gravelPack: WHITE,
  air: WHITE,
  pumpBody: drawn,
  motorBody: drawn,
  pipeBody: drawn,
  metalPipe: drawn,
  brass: drawn,
  steel: drawn,
  castIron: drawn,
  rubber: { ...drawn, dark: '#E1E1E1' },
  tape: BLACK,
};

/** For the screen: one ink on one paper, and no greys between. */
function twoInks(on: string, ink: string): Ink {
  const plain: Shade = { light: on, mid: on, dark: on, edge: ink };
  const solid: Shade = { light: ink, mid: ink, dark: ink, edge: ink };
  const ground: GroundInk = { fill: on, hatch: ink };
  return {
    paper: on,
    panel: on,
    ink,
    ink2: ink,
    hair: ink,
    rule: ink,
    static: ink,
    pumping: ink,
    frost: ink,
    casing: ink,
    dropPipe: ink,
    wire: ink,
    rope: ink,
    pump: ink,
    danger: ink,
    onDanger: on,
    warning: on,
    onWarning: ink,
    note: ink,
    allowed: ink,
    grass: ink,
    ground: { soil: ground, clay: ground, sand: ground, gravel: ground, rock: ground },
    water: on,
    waterEdge: ink,
    frostFill: on,
    snow: on,
    grout: on,
    gravelPack: on,
    air: on,
    pumpBody: plain,
    motorBody: plain,
    pipeBody: plain,
    metalPipe: plain,
    brass: plain,
    steel: plain,
    castIron: plain,
    rubber: solid,
    tape: ink,
  };
}

export const THEMES: Readonly<Record<View['theme'], Ink>> = {
  light,
  dark,
  print,
  contrast: twoInks(WHITE, BLACK),
  'contrast-dark': twoInks(BLACK, WHITE),
};

/** Strong contrast on a screen, either way round. */
export function isContrast(theme: View['theme']): boolean {
  return theme === 'contrast' || theme === 'contrast-dark';
}

/** Two tones: hatching is drawn whole, and what colour filled is outlined. */
export function isTwoTone(theme: View['theme']): boolean {
  return theme === 'print' || isContrast(theme);
}

/** Line widths in px: narrow for leaders, dimensions and hatch; wide for cut parts and levels; ground for its surface. */
export const LINE = { hatch: 0.7, narrow: 1, wide: 2, ground: 3.5 } as const;

/** Font sizes in px. */
export const TYPE = { small: 11, note: 12, label: 14, viewTitle: 16, title: 22 } as const;
