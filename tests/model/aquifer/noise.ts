/** Scatter of readings: the same for the same seed. */
export function noiseFrom(seed: number): () => number {
  let state = seed >>> 0;
  // Mulberry32: enough for scatter, and the same on every machine.
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  // Box & Muller (1958): two even numbers make a normal one.
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}
