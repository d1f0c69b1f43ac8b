/**
 * How much of the cold in the air reaches the ground under a surface: freezing index at the surface over that of the air.
 *
 * Surfaces are in sun and air, without snow, ice, dust or heat from a building, unless they say otherwise. Snow is never
 * counted on: it can be absent or ploughed away.
 *
 * Sources  TM 5-852-4 / AFM 88-19, chapter 4, Table 4-1 (n-factors); "ploughed driveway" is a cautious figure after airfield
 *          pavement practice of the Corps of Engineers, from memory
 */
export interface Surface {
  readonly id: string;
  readonly label: string;
  /** n [-] */
  readonly factor: number;
  readonly source: 'published' | 'from memory';
}

export const SURFACES: readonly Surface[] = [
  { id: 'lawn', label: 'lawn or turf', factor: 0.5, source: 'published' },
  { id: 'bare soil', label: 'bare soil kept free of snow', factor: 0.7, source: 'published' },
  { id: 'asphalt', label: 'asphalt kept free of snow', factor: 0.7, source: 'published' },
  { id: 'concrete', label: 'concrete kept free of snow', factor: 0.75, source: 'published' },
  { id: 'shaded', label: 'shaded surface', factor: 0.9, source: 'published' },
  { id: 'trees', label: 'under trees', factor: 0.3, source: 'published' },
  { id: 'snow', label: 'top of the snow, with the snow as a layer', factor: 1, source: 'published' },
  { id: 'ploughed driveway', label: 'ploughed driveway or road', factor: 0.9, source: 'from memory' },
];

/** Bare soil: what is taken where nobody named the surface. */
export const USUAL_SURFACE_FACTOR = 0.7;

/** A surface by its id or label; null when there is none of that name. */
export function findSurface(text: string): Surface | null {
  const wanted = text.trim().toLowerCase().replaceAll('_', ' ');
  return SURFACES.find(({ id, label }) => id === wanted || label === wanted) ?? null;
}
