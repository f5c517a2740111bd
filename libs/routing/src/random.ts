/** A stream of random numbers in [0, 1) that is the same for the same seed. */
export type Random = () => number;

/** Mulberry32 (Tommy Ettinger, public domain): small, fast, and good enough to pick moves with. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from 0 to `count` - 1. */
export const pick = (random: Random, count: number): number => Math.floor(random() * count);
