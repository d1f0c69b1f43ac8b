/**
 * From a driller's word to the pattern of the standard chart.
 *
 * Source   FGDC-STD-013-2006, Digital Cartographic Standard for Geologic Map Symbolization, section 37, lithologic
 *          patterns: numbers and names. Which word takes which pattern is a choice of our own, no source.
 */
export interface LithologicPattern {
  readonly number: string;
  readonly name: string;
}

const NAMES = {
  '601': 'Gravel or conglomerate (1st option)',
  '602': 'Gravel or conglomerate (2nd option)',
  '605': 'Breccia (1st option)',
  '607': 'Massive sand or sandstone',
  '612': 'Argillaceous or shaly sandstone',
  '616': 'Silt, siltstone, or shaly silt',
  '619': 'Sandy or silty shale',
  '620': 'Clay or clay shale',
  '623': 'Calcareous shale or marl',
  '624': 'Carbonaceous shale',
  '626': 'Chalk',
  '627': 'Limestone',
  '641': 'Dolomitic limestone',
  '642': 'Dolostone or dolomite',
  '657': 'Peat',
  '658': 'Coal',
  '667': 'Gypsum',
  '668': 'Salt',
  '681': 'Till or diamicton (1st option)',
  '682': 'Till or diamicton (2nd option)',
  '684': 'Loess (1st option)',
  '702': 'Quartzite',
  '703': 'Slate',
  '705': 'Schist',
  '708': 'Gneiss',
  '717': 'Basaltic flows',
  '719': 'Granite (2nd option)',
  '721': 'Igneous rock (1st option)',
} as const;

/** Null for ground that the chart has no pattern for. */
const WORDS: Readonly<Record<string, keyof typeof NAMES | null>> = {
  topsoil: null,
  'top soil': null,
  fill: null,
  clay: '620',
  'sandy clay': '619',
  'silty clay': '619',
  'stony clay': '682',
  'boulder clay': '681',
  silt: '616',
  sand: '607',
  'fine sand': '607',
  'coarse sand': '607',
  'clayey sand': '612',
  'silty sand': '612',
  gravel: '601',
  'coarse gravel': '602',
  'sand and gravel': '601',
  cobbles: '602',
  till: '681',
  hardpan: '681',
  peat: '657',
  muck: '657',
  loess: '684',
  shale: '620',
  'black shale': '624',
  sandstone: '607',
  siltstone: '616',
  limestone: '627',
  'dolomitic limestone': '641',
  dolomite: '642',
  dolostone: '642',
  chalk: '626',
  marl: '623',
  coal: '658',
  gypsum: '667',
  salt: '668',
  breccia: '605',
  granite: '719',
  gneiss: '708',
  schist: '705',
  slate: '703',
  quartzite: '702',
  basalt: '717',
};

/** Says only that it is rock, so any other word says more. */
const BEDROCK = 'bedrock';

/** Longest first; of two as long, the order is that of the list. */
const LONGEST_FIRST = Object.keys(WORDS).sort((one, other) => other.length - one.length);

/** The pattern for a layer as the driller wrote it, by the longest word found in it; null where none is known. */
export function lithologicPattern(material: string): LithologicPattern | null {
  const said = ` ${material.toLowerCase().replace(/[^a-z]+/g, ' ')} `;
  const has = (word: string): boolean => said.includes(` ${word} `);
  const found = LONGEST_FIRST.find(has);
  const number = found === undefined ? (has(BEDROCK) ? '721' : null) : (WORDS[found] ?? null);
  return number === null ? null : { number, name: NAMES[number] };
}
