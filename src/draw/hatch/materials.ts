/** From a driller's word for the ground to its fill and pattern. */
import type { GroundName } from '../theme.ts';
import type { PatternName } from './patterns.ts';

export interface GroundLook {
  readonly ground: GroundName;
  readonly pattern: PatternName;
}

/** The first word found decides, so the narrow ones stand first: "weathered shale" before "shale", "hardpan" before "pan". */
const WORDS: readonly (readonly [words: RegExp, ground: GroundName, pattern: PatternName])[] = [
  [/topsoil|top soil|loam|fill|peat|muck|organic|soil/, 'soil', 'soil'],
  [/till|hardpan|hard pan|boulder clay|drift/, 'clay', 'till'],
  [
    /sand.*(and|&|,|\+|with).*gravel|gravel.*(and|&|,|\+|with).*sand|sandy gravel|gravelly sand/,
    'sand',
    'sandAndGravel',
  ],
  [/(weathered|rotten|soft|broken) shale|shale.*(weathered|rotten|broken)|mudstone/, 'rock', 'weatheredShale'],
  [
    /(weathered|rotten|decomposed|broken) (granite|gneiss|basalt|schist|slate|limestone|dolomite|sandstone|bedrock|rock|ledge)|saprolite|grus/,
    'rock',
    'weatheredRock',
  ],
  [/conglomerate|breccia/, 'gravel', 'conglomerate'],
  [/sandstone|quartzite/, 'sand', 'sandstone'],
  [/dolomite|dolostone/, 'rock', 'dolomite'],
  [/limestone|chalk|marble|caliche|coral/, 'rock', 'limestone'],
  [/shale|slate|siltstone|claystone/, 'rock', 'shale'],
  [/granite|gneiss|diorite|gabbro|syenite/, 'rock', 'granite'],
  [/basalt|lava|trap|andesite|rhyolite|volcanic|tuff/, 'rock', 'basalt'],
  [/schist|phyllite|mica/, 'rock', 'schist'],
  [/rock|ledge|bedrock|stone/, 'rock', 'rock'],
  [/(gravelly|stony|bouldery) (clay|silt)|(clay|silt).*(gravel|stones|boulders)/, 'clay', 'till'],
  [/sandy (clay|silt)|(clay|silt) (and|&|\+|with) .*sand|sand (and|&|\+) (clay|silt)/, 'clay', 'sandyClay'],
  [/gravel|cobble|boulder|pebble/, 'gravel', 'gravel'],
  [/coarse sand/, 'sand', 'coarseSand'],
  [/fine sand|silty sand|dune|beach/, 'sand', 'fineSand'],
  [/sand/, 'sand', 'sand'],
  [/silt|loess/, 'clay', 'silt'],
  [/clay|marl|gumbo/, 'clay', 'clay'],
];

const UNKNOWN_GROUND: GroundLook = { ground: 'gravel', pattern: 'unknown' };

function lookFor(words: string): GroundLook {
  const found = WORDS.find(([pattern]) => pattern.test(words));
  return found === undefined ? UNKNOWN_GROUND : { ground: found[1], pattern: found[2] };
}

/** What drillers write most, read once: every layer is asked several times a drawing. */
const USUAL: ReadonlyMap<string, GroundLook> = new Map(
  [
    ...['topsoil', 'fill', 'till', 'hardpan', 'clay', 'sandy clay', 'silt', 'sand', 'fine sand', 'coarse sand'],
    ...['sand and gravel', 'gravel', 'boulders', 'sandstone', 'limestone', 'dolomite', 'shale', 'weathered shale'],
    ...['granite', 'weathered granite', 'gneiss', 'basalt', 'schist', 'slate', 'rock', 'bedrock', 'conglomerate'],
  ].map((words) => [words, lookFor(words)]),
);

/** @param material  null where nobody said */
export function lookOf(material: string | null): GroundLook {
  if (material === null) return UNKNOWN_GROUND;
  const words = material.toLowerCase();
  return USUAL.get(words) ?? lookFor(words);
}
