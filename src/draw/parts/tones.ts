/** The materials' tones per theme: five flat tones from shadow to shine for what is seen, one for what is cut. */
export type ThemeName = 'light' | 'dark' | 'print' | 'contrast' | 'contrast-dark';

/** Flat tones of one material under light from the upper left. */
export interface Ramp {
  readonly edge: string;
  readonly shadow: string;
  readonly shade: string;
  readonly base: string;
  readonly light: string;
  readonly shine: string;
}

/** A face that the section cuts: fill, and the ink of its edge and hatching. */
export interface Cut {
  readonly fill: string;
  readonly ink: string;
}

export interface Tones {
  readonly steel: Ramp;
  readonly brass: Ramp;
  readonly cast: Ramp;
  readonly rubber: Ramp;
  readonly pump: Ramp;
  readonly motor: Ramp;
  readonly pipe: Ramp;
  readonly conduit: Ramp;
  readonly tank: Ramp;
  readonly pipeWall: Cut;
  readonly metalWall: Cut;
  readonly plasticWall: Cut;
  readonly concreteWall: Cut;
  readonly brassCut: Cut;
  readonly grout: Cut;
  readonly gravel: Cut;
  readonly bedding: Cut;
  readonly strainer: Cut;
  readonly bore: string;
  readonly air: string;
  readonly water: string;
  readonly waterEdge: string;
  /** On the water in a pipe. */
  readonly waterShine: string;
  readonly turf: string;
  readonly cable: string;
  readonly cableShine: string;
  readonly rope: string;
  readonly ropeTwist: string;
  readonly bond: string;
  readonly ink: string;
  readonly tape: string;
  /** Black, red, yellow and green leads in the order of the splice. */
  readonly leads: readonly [string, string, string, string];
}

const ramp = (edge: string, shadow: string, shade: string, base: string, light: string, shine: string): Ramp => ({
  edge,
  shadow,
  shade,
  base,
  light,
  shine,
});

const light: Tones = {
  steel: ramp('#44525c', '#84919a', '#a6b2b9', '#c3ccd2', '#dbe2e6', '#f4f7f8'),
  brass: ramp('#5d430e', '#94702b', '#b88e40', '#d4ab5b', '#e8ca86', '#f8e8bd'),
  cast: ramp('#2c343b', '#4f5a64', '#66727c', '#7f8b95', '#9ba6af', '#c3ccd3'),
  rubber: ramp('#14181b', '#1f2428', '#2b3136', '#3a4147', '#515a61', '#7d878e'),
  pump: ramp('#3a2b73', '#5d4a9e', '#7966b8', '#9786cd', '#b7aadf', '#e0daf3'),
  motor: ramp('#35296a', '#554888', '#6d5fa0', '#887bb6', '#a79cca', '#d2cbe6'),
  pipe: ramp('#16261d', '#22372b', '#2f4a3a', '#456a53', '#6b8f79', '#9fbdab'),
  conduit: ramp('#4f5c65', '#87949c', '#a4b0b7', '#bfc9cf', '#d5dde1', '#eef2f4'),
  tank: ramp('#1f3f66', '#3f6596', '#5a80b0', '#7d9fc8', '#a5bfdd', '#d5e2f0'),
  pipeWall: { fill: '#2f4a3a', ink: '#16261d' },
  metalWall: { fill: '#8d949c', ink: '#23272e' },
  plasticWall: { fill: '#e9eceb', ink: '#4a5358' },
  concreteWall: { fill: '#d3d0c8', ink: '#5f5b4c' },
  brassCut: { fill: '#e3c177', ink: '#5d430e' },
  grout: { fill: '#cbc3b4', ink: '#7d7464' },
  gravel: { fill: '#efe7cf', ink: '#75601f' },
  bedding: { fill: '#efe2bf', ink: '#75601f' },
  strainer: { fill: '#2b2350', ink: '#b9b0dd' },
  bore: '#fbfaf7',
  air: '#f1f6f8',
  water: '#a6cbe7',
  waterEdge: '#3f78a8',
  waterShine: '#fff',
  turf: '#3f5a2a',
  cable: '#780000',
  cableShine: '#b5534a',
  rope: '#8f7d0b',
  ropeTwist: '#e6d98a',
  bond: '#2f7d32',
  ink: '#1e2326',
  tape: '#111417',
  leads: ['#15181a', '#b3261e', '#e0b400', '#2f7d32'],
};

const dark: Tones = {
  ...light,
  steel: ramp('#0b0e10', '#5d6a73', '#7f8c95', '#a2aeb6', '#c3ccd2', '#e9eef0'),
  brass: ramp('#1d1503', '#7d5c1c', '#a37a31', '#c6994a', '#dfba73', '#f5dfae'),
  cast: ramp('#0b0e10', '#57636d', '#6f7c86', '#8b97a1', '#a8b3bb', '#cfd7dd'),
  rubber: ramp('#8a949b', '#1a1f23', '#262c31', '#363e44', '#505a61', '#848f97'),
  pump: ramp('#120a2c', '#6a4fb0', '#8767cc', '#a482e6', '#bf9ff8', '#e5d6ff'),
  motor: ramp('#120a2c', '#574585', '#7058a3', '#8a72bd', '#a892d4', '#d5c8ee'),
  pipe: ramp('#08110c', '#5c7d66', '#7fa58b', '#a3c9ad', '#c5e5c3', '#eaf8ea'),
  conduit: ramp('#0b0e10', '#5a666e', '#77848c', '#95a2aa', '#b2bdc4', '#dce3e7'),
  tank: ramp('#081423', '#34568a', '#4c70a8', '#6c90c6', '#93b1de', '#cfdff4'),
  pipeWall: { fill: '#9cc4a6', ink: '#0b1710' },
  metalWall: { fill: '#98a0a0', ink: '#14181b' },
  plasticWall: { fill: '#d2d7d8', ink: '#20272b' },
  concreteWall: { fill: '#8f8c82', ink: '#1d1c18' },
  brassCut: { fill: '#d0a556', ink: '#1d1503' },
  grout: { fill: '#4a463e', ink: '#a79e8c' },
  gravel: { fill: '#3b3620', ink: '#dcc66f' },
  bedding: { fill: '#463e22', ink: '#dcc66f' },
  strainer: { fill: '#160f30', ink: '#cbb8f5' },
  bore: '#14191c',
  air: '#171d21',
  water: '#24496a',
  waterEdge: '#7fb4dd',
  turf: '#7fa35a',
  cable: '#e28266',
  cableShine: '#f6c3b2',
  rope: '#fecd3b',
  ropeTwist: '#7a6106',
  bond: '#7ec981',
  ink: '#eceff1',
  tape: '#dfe4e7',
  leads: ['#0b0e10', '#f2685c', '#ffd84d', '#7ec981'],
};

/** Paper carries outlines, hatching and at most a tenth of grey. */
const grey = ramp('#000', '#e0e0e0', '#ebebeb', '#f5f5f5', '#fff', '#fff');
const print: Tones = {
  ...light,
  steel: grey,
  brass: grey,
  cast: grey,
  pump: grey,
  motor: grey,
  pipe: grey,
  conduit: grey,
  tank: grey,
  rubber: ramp('#000', '#e0e0e0', '#e0e0e0', '#e4e4e4', '#ececec', '#fff'),
  pipeWall: { fill: '#fff', ink: '#000' },
  metalWall: { fill: '#fff', ink: '#000' },
  plasticWall: { fill: '#fff', ink: '#000' },
  concreteWall: { fill: '#fff', ink: '#000' },
  brassCut: { fill: '#fff', ink: '#000' },
  grout: { fill: '#e3e3e3', ink: '#555' },
  gravel: { fill: '#fff', ink: '#333' },
  bedding: { fill: '#fff', ink: '#333' },
  strainer: { fill: '#fff', ink: '#000' },
  bore: '#fff',
  air: '#fff',
  water: '#e5e5e5',
  waterEdge: '#000',
  turf: '#000',
  cable: '#000',
  cableShine: '#fff',
  rope: '#000',
  ropeTwist: '#fff',
  bond: '#000',
  ink: '#000',
  tape: '#000',
  leads: ['#000', '#000', '#000', '#000'],
};

/** No greys at all: edges, cut faces and line work say everything. */
function twoInks(on: string, ink: string): Tones {
  const bare = ramp(ink, on, on, on, on, on);
  const cut: Cut = { fill: on, ink };
  return {
    steel: bare,
    brass: bare,
    cast: bare,
    rubber: ramp(ink, ink, ink, ink, ink, on),
    pump: bare,
    motor: bare,
    pipe: bare,
    conduit: bare,
    tank: bare,
    pipeWall: cut,
    metalWall: cut,
    plasticWall: cut,
    concreteWall: cut,
    brassCut: cut,
    grout: cut,
    gravel: cut,
    bedding: cut,
    strainer: cut,
    bore: on,
    air: on,
    water: on,
    waterEdge: ink,
    waterShine: on,
    turf: ink,
    cable: ink,
    cableShine: on,
    rope: ink,
    ropeTwist: on,
    bond: ink,
    ink,
    tape: ink,
    leads: [ink, ink, ink, ink],
  };
}

export const tonesOf: Readonly<Record<ThemeName, Tones>> = {
  light,
  dark,
  print,
  contrast: twoInks('#fff', '#000'),
  'contrast-dark': twoInks('#000', '#fff'),
};
