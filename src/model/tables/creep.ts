/**
 * Apparent modulus of polyethylene under a steady pull at 73 °F (23 °C), pounds per square inch, by the first digit of
 * its designation code (PE4710 is PE4xxx).
 *
 * Source  PPI Handbook of Polyethylene Pipe, chapter 3, appendix B, Table B.1.1; rows between these are left out
 */
export const CREEP_MODULUS: readonly {
  readonly hours: number;
  readonly PE2: number;
  readonly PE3: number;
  readonly PE4: number;
}[] = [
  { hours: 0.5, PE2: 62000, PE3: 78000, PE4: 82000 },
  { hours: 2, PE2: 57000, PE3: 71000, PE4: 74000 },
  { hours: 12, PE2: 48000, PE3: 60000, PE4: 63000 },
  { hours: 100, PE2: 42000, PE3: 52000, PE4: 55000 },
  { hours: 8760, PE2: 30000, PE3: 38000, PE4: 40000 },
  { hours: 438000, PE2: 22000, PE3: 28000, PE4: 29000 },
];

/**
 * Young's modulus of pipe that does not creep at these loads, pounds per square inch.
 *
 * Source  PVC: data sheets for cell class 12454, 400,000 to 420,000; steel and stainless steel: from memory
 */
export const YOUNGS_MODULUS: Readonly<Record<string, number>> = {
  PVC: 400_000,
  'galvanized steel': 29_000_000,
  'stainless steel': 28_000_000,
};

/**
 * Lengthening per degree Fahrenheit.
 *
 * Source  published tables of thermal expansion of piping materials. Polyethylene is printed as 6.7e-5 (HDPE) and 8.3e-5
 *         (PE); 8.0e-5 is a round choice between them, no source.
 */
export const EXPANSION_PER_FAHRENHEIT: Readonly<Record<string, number>> = {
  PE: 8.0e-5,
  PVC: 2.9e-5,
  'galvanized steel': 6.5e-6,
  'stainless steel': 9.9e-6,
  copper: 9.3e-6,
};
