// Random numbers for the demo: the same on every machine. Sums and products of whole numbers only, no logarithm or cosine.

export type Seeded = {
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly pick: <T>(from: readonly T[]) => T;
};

/** A stream that depends on the seed and the name only, so that a new column does not shift an old one. */
export function seeded(seed: number, name: string): Seeded {
  let state = seed >>> 0;
  for (const letter of name) state = (Math.imul(state ^ (letter.codePointAt(0) ?? 0), 0x9e3779b1) + 0x7f4a7c15) >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  /** Twelve uniforms less six: mean 0, standard deviation 1, never beyond 6. */
  const normal = () => {
    let sum = -6;
    for (let i = 0; i < 12; i++) sum += uniform();
    return sum;
  };
  const pick = <T>(from: readonly T[]): T => from[Math.floor(uniform() * from.length)] as T;
  return { uniform, normal, pick };
}
