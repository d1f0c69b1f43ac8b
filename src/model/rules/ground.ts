/** From a driller's word for the ground to whether a casing can be seated in it. */

import type { Facts } from '../facts.ts';

/** Rock that is still called rock but holds no casing tight. */
const BROKEN = /weathered|rotten|decomposed|broken|soft|fractured zone|saprolite/;
const FIRM =
  /granite|gneiss|schist|slate|shale|sandstone|limestone|dolomite|dolostone|chalk|marble|basalt|lava|trap|andesite|rhyolite|tuff|quartzite|conglomerate|siltstone|claystone|mudstone|phyllite|diorite|gabbro|syenite|bedrock|ledge|\brock\b/;
const LOOSE =
  /soil|loam|fill|peat|muck|overburden|drift|till|hardpan|clay|silt|loess|marl|gumbo|sand|gravel|cobble|boulder|pebble/;

type Layer = Facts['well']['layers'][number];

/** Rules ask again with every plan, and a layer's word never changes. */
const KNOWN = new WeakMap<Layer, boolean | null>();

/** True for firm rock, false for loose or broken ground, null for a word that nobody taught us. */
export function isFirmRock(layer: Layer): boolean | null {
  const known = KNOWN.get(layer);
  if (known !== undefined) return known;
  const firm = isFirm(layer.material);
  KNOWN.set(layer, firm);
  return firm;
}

function isFirm(material: string): boolean | null {
  const words = material.toLowerCase();
  if (BROKEN.test(words)) return false;
  if (FIRM.test(words)) return true;
  return LOOSE.test(words) ? false : null;
}
