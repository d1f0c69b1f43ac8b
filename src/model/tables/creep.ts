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
