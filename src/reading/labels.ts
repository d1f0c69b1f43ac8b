/**
 * What the lines of a report are called, in the words of the forms that drillers fill in. A line that is known and holds
 * nothing for a drawing is here too, so that its numbers are nobody else's.
 */

export type Fact =
  | 'depth'
  | 'drilledDepth'
  | 'soundedDepth'
  | 'static'
  | 'pumpingLevel'
  | 'drawdown'
  | 'yield'
  | 'testRate'
  | 'testHours'
  | 'testMethod'
  | 'testIntake'
  | 'recommendedDepth'
  | 'recommendedRate'
  | 'pumpDepth'
  | 'pumpPower'
  | 'firstWater'
  | 'casingSize'
  | 'casingInside'
  | 'casingBottom'
  | 'casingHeight'
  | 'casingMaterial'
  | 'casingWall'
  | 'grout'
  | 'holeSize'
  | 'date'
  | 'artesianFlow'
  | 'pitless'
  /** Words that take their meaning from the part that they stand in. */
  | 'bareDepth'
  | 'bareSize'
  | 'bareMaterial'
  | 'aside';

/** What kind of value follows. */
export type Takes = 'length' | 'size' | 'flow' | 'time' | 'power' | 'date' | 'words' | 'nothing';

export interface Label {
  readonly fact: Fact;
  readonly takes: Takes;
  readonly pattern: RegExp;
}

const label = (fact: Fact, takes: Takes, ...patterns: readonly string[]): Label => ({
  fact,
  takes,
  pattern: new RegExp(String.raw`(?<![\w-])(?:${patterns.join('|')})(?![\w-])`, 'g'),
});

const OF = String.raw`\s+(?:of\s+)?(?:the\s+)?`;

export const LABELS: readonly Label[] = [
  label(
    'drilledDepth',
    'length',
    ...[
      'total depth drilled',
      'total drilled depth',
      'depth drilled',
      'drilled depth',
      'depth of drilling',
      'bore ?hole depth',
      'hole depth',
    ],
    ...[`depth${OF}(?:bore)?hole`, `depth${OF}boring`, 'total boring depth', 'drilled to'],
  ),
  label(
    'depth',
    'length',
    ...[
      'completed well depth',
      'completed depth',
      'depth completed',
      'finished depth',
      'finished well depth',
      'total well depth',
      'total depth',
    ],
    ...[
      'well depth',
      `depth${OF}(?:completed\\s+|finished\\s+)?well`,
      `bottom${OF}well`,
      'depth of completed well',
      'final depth',
      'constructed depth',
    ],
  ),
  label(
    'soundedDepth',
    'length',
    'sounded depth',
    'depth sounded',
    'sounded at',
    'depth measured today',
    'measured well depth',
    'bottom sounded',
  ),
  label(
    'static',
    'length',
    ...[
      'static water level',
      'static water-level',
      'static level',
      'standing water level',
      'standing level',
      's\\.?w\\.?l\\.?',
      'water level at rest',
    ],
    ...[
      'depth to static water',
      'depth to water',
      'static head',
      'rest level',
      'resting level',
      'natural water level',
      'non-?pumping (?:water )?level',
    ],
    ...['water level before pumping', 'initial water level', 'static', 'water level'],
  ),
  label(
    'pumpingLevel',
    'length',
    ...[
      'pumping water level',
      'pumping level',
      'p\\.?w\\.?l\\.?',
      'water level (?:while|during|when) pumping',
      'level (?:while|during) pumping',
    ],
    ...[
      'water level after (?:pumping|test)',
      'final (?:pumping )?water level',
      'final pumping level',
      'dynamic (?:water )?level',
      '(?:final )?(?:water )?level (?:at )?(?:the )?end of (?:the )?(?:test|pumping)',
    ],
    ...['depth to water at (?:the )?end of (?:the )?test', 'water level at (?:the )?end'],
  ),
  label('drawdown', 'length', 'draw\\s?-?down', 'water level drop', 'lowering of water level'),
  label(
    'recommendedDepth',
    'length',
    ...[
      'recommended (?:pump )?(?:intake )?(?:depth|setting|set|placement)(?: of pump)?',
      'recommended pump set(?:ting)?(?: at| depth)?',
    ],
    ...[
      'recommend(?:ed|s)? (?:setting (?:the )?)?pump (?:setting |intake |depth )?(?:at|depth|to)',
      'recommended depth of pump',
      'pump should be set(?: at)?',
      'suggested pump (?:setting|depth)',
    ],
  ),
  label(
    'recommendedRate',
    'flow',
    'recommended (?:pump(?:ing)? )?(?:rate|capacity|flow|yield|size)',
    'suggested (?:pump(?:ing)? )?rate',
    'recommended pump (?:rate|capacity)',
  ),
  label(
    'testIntake',
    'length',
    ...[
      'test pump (?:set|setting|intake|depth)(?: at)?',
      'pump (?:intake )?(?:set|depth|setting) (?:for|during) (?:the )?test(?:ing)?(?: at)?',
      'drill (?:stem|pipe|rod)s? (?:set )?(?:at|depth|to)',
    ],
    ...[
      'air ?line (?:set )?(?:at|depth)',
      'stem (?:set )?at',
      'air (?:pipe|hose) (?:set )?(?:at|depth)',
      'bailer (?:set )?at',
      'tool depth',
    ],
  ),
  label(
    'pumpDepth',
    'length',
    ...[
      'pump (?:intake )?(?:depth|setting)',
      'pump (?:intake )?(?:is |was )?(?:set|hung|installed|hangs|placed)(?: at| to| depth)?',
      'depth (?:of|to) (?:the )?pump(?: intake)?',
      'pump intake(?: at| depth)?',
      'intake depth',
      'depth of intake',
    ],
  ),
  label(
    'pumpPower',
    'power',
    'pump (?:motor )?(?:horse ?power|h\\.?p\\.?)',
    'horse ?power',
    'motor (?:size|h\\.?p\\.?)',
    'h\\.?p\\.?',
  ),
  label(
    'firstWater',
    'length',
    ...[
      'first water(?: (?:found|struck|encountered|at|hit))*',
      'water first (?:found|struck|encountered|hit)(?: at)?',
      'depth (?:to|of|at) first water',
      'depth water first found',
      'depth to first water',
    ],
  ),
  label(
    'yield',
    'flow',
    ...[
      'estimated yield',
      'well yield',
      'reported yield',
      'measured yield',
      'tested yield',
      'yield of well',
      'yields?',
      'yielding',
      'well capacity',
      'well production',
    ],
    ...['production(?! (?:casing|string))', 'production rate', 'est\\.? yield', 'flow rate', 'air ?lift yield'],
  ),
  label(
    'testRate',
    'flow',
    ...[
      'pumping rate',
      'test rate',
      'rate of pumping',
      'pump(?:ed)? rate',
      'rate pumped',
      'discharge rate',
      'discharge',
      'test pumped at',
      'pumped at',
      'bailed at',
      'bailing rate',
      'test yield',
      'tested at',
      'rate',
    ],
  ),
  label(
    'testHours',
    'time',
    ...[
      'duration of (?:the )?(?:test|pumping)',
      'test duration',
      'pumping duration',
      'duration',
      'hours pumped',
      '(?<=^\\s*)hours',
      'length of test',
      'test length',
      'time pumped',
      'pumped for',
      'hours of pumping',
      'pumping time',
      'after',
    ],
  ),
  label(
    'testMethod',
    'words',
    ...[
      'test(?:ing)? method',
      'method of test(?:ing)?',
      'type of (?:well )?test',
      'tested by',
      'yield test(?:ed)? (?:by|method)',
      'method used',
      '(?<=^\\s*)method',
      'well test(?:ed)? (?:by|method)',
      'how tested',
      'yield (?:determined|measured|estimated) by',
    ],
  ),
  label(
    'casingInside',
    'size',
    ...['casing (?:inside diameter|i\\.?d\\.?)', 'inside diameter(?: of (?:the )?casing)?', 'i\\.d\\. of casing'],
  ),
  label(
    'casingSize',
    'size',
    ...[
      'casing (?:nominal )?(?:diameter|dia\\.?|size|o\\.?d\\.?)',
      '(?:diameter|size) of (?:the )?casing',
      'well diameter',
      'diameter of (?:the )?well',
      'cased with',
    ],
  ),
  label(
    'casingBottom',
    'length',
    ...[
      'casing (?:depth|length|bottom|set(?: to| at)?|to|installed to|shoe(?: at)?)',
      '(?:depth|length|bottom) of (?:the )?casing',
      'cased (?:to|depth)',
      'bottom of casing',
      'total casing(?: length)?',
      'casing depth to',
      'drive shoe (?:at|set at)',
    ],
  ),
  label(
    'casingHeight',
    'length',
    ...[
      'stick ?-?up',
      'casing (?:height|stick ?-?up)(?: above (?:ground|grade|land surface))?',
      'height of casing(?: above (?:the )?(?:ground|grade|land surface))?',
      'casing above (?:ground|grade)',
    ],
    ...[
      'casing extends above (?:ground|grade)',
      'length (?:rising )?above (?:the )?ground',
      'top of casing above (?:ground|grade|land surface)',
      'casing (?:top|ends|finished) (?=«)',
    ],
  ),
  label('casingMaterial', 'words', 'casing (?:material|type|kind)', '(?:type|kind|material) of (?:the )?casing'),
  label('casingWall', 'words', 'casing (?:wall(?: thickness)?|weight|schedule|gauge)', 'wall thickness'),
  label(
    'grout',
    'length',
    ...[
      'grout(?:ed)?(?: from| to| depth| seal| interval)*',
      '(?:surface |annular |sanitary )?seal(?: depth| from| to| interval)+',
      'depth (?:of|to bottom of) (?:the )?(?:grout|seal)',
      'annular seal',
      'surface seal',
    ],
  ),
  label(
    'holeSize',
    'size',
    'open hole (?:diameter|dia\\.?|size)',
    '(?:bore)?hole (?:diameter|dia\\.?|diam\\.?|size)',
    'bit (?:size|diameter)',
    'diameter of (?:the )?(?:bore)?hole',
    'drilled diameter',
  ),
  label(
    'date',
    'date',
    ...[
      'date (?:well )?completed',
      'completion date',
      'date of completion',
      'completed on',
      'date of test',
      'test date',
      'date tested',
      'date measured',
      'measured on',
      'date (?:of )?(?:measurement|reading)',
      'date\\/time measured',
    ],
    ...['date drilled', 'drilled on', 'date of work', 'date'],
  ),
  label(
    'bareDepth',
    'length',
    '(?<=^\\s*(?:[|•-]\\s*)?)(?:depth|length)(?=\\s*[:=(|]|\\s+«)',
    '(?<=[.;]\\s)depth(?=\\s*[:=(]|\\s+«)',
  ),
  label('bareSize', 'size', '(?<=^\\s*(?:[|•-]\\s*)?)(?:diameter|dia\\.?|size)(?=\\s*[:=(|]|\\s+«)'),
  label('bareMaterial', 'words', '(?<=^\\s*(?:[|•-]\\s*)?)material(?=\\s*[:=(|])'),
  label(
    'artesianFlow',
    'flow',
    'artesian flow',
    'natural flow',
    'flowing',
    'overflow',
    'flows?(?= (?:over|at|naturally))',
  ),
  // Known, and nothing for a drawing.
  label(
    'aside',
    'nothing',
    ...[
      "owner(?:'s)?(?: name)?",
      'name',
      'address',
      'mailing address',
      'street',
      'city',
      'county',
      'township',
      'range',
      'section',
      'sec\\.?',
      'twp\\.?',
      'rge\\.?',
      'lot',
      'block',
      'subdivision',
      'parcel',
      'concession',
      'municipality',
    ],
    ...[
      'permit(?: no\\.?| number| #)?',
      'licen[cs]e(?: no\\.?| number| #)?',
      'tag(?: no\\.?| number| #)?',
      'well (?:id|no\\.?|number|tag|log id|#)',
      'registration(?: no\\.?| number)?',
      'start card',
      'phone',
      'telephone',
      'fax',
      'zip',
      'postal code',
      'e-?mail',
    ],
    ...[
      'latitude',
      'longitude',
      'lat',
      'long',
      'utm',
      'easting',
      'northing',
      'elevation',
      'ground (?:surface )?elevation',
      'altitude',
      "driller(?:'s)?(?: name)?",
      'contractor',
      'company',
      'signature',
      'remarks',
      'use of well',
      'intended use',
      'proposed use',
    ],
    ...[
      'drilling method',
      'method of drilling',
      'drilling fluid',
      'water temperature',
      'temperature',
      'temp',
      'amount',
      'quantity',
      'volume',
      'bags',
      'sacks',
      'slot(?: size| opening)?',
      'distance to',
      'water used',
      'recovery',
      'recovered',
    ],
    ...[
      'disinfect(?:ed|ion)',
      'chlorine',
      'filter pack',
      'gravel pack',
      'packer(?:s)?',
      'pump (?:type|make|model|serial)',
      'motor (?:make|model|serial)',
      'tank(?: size| volume)?',
      'pressure',
      'specific capacity',
      'transmissivity',
      'hardness',
      'iron',
      'nitrate',
      'ph',
      'aquifer',
      'bedrock(?: at| depth)?',
      'depth to (?:bed)?rock',
      'rock at',
    ],
    ...['water (?:found|struck|encountered|bearing)(?: at)?', 'distance from', 'start(?:ed)? date', 'date started'],
  ),
];

/** A label found in a piece of text. */
export interface Labelled {
  readonly label: Label;
  readonly start: number;
  readonly end: number;
}

/** Where labels stand, from left to right; of two at one place the longer counts. */
export function labelsIn(marked: string): readonly Labelled[] {
  const found = LABELS.flatMap((each) =>
    [...marked.matchAll(each.pattern)].map((match) => ({
      label: each,
      start: match.index,
      end: match.index + match[0].length,
    })),
  ).sort((a, b) => a.start - b.start || b.end - a.end);
  const kept: Labelled[] = [];
  for (const each of found) {
    const last = kept.at(-1);
    if (last !== undefined && each.start < last.end) continue;
    kept.push(each);
  }
  return kept;
}
