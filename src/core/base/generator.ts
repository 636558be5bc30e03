/** A seeded stream of random numbers. It is always an argument: nothing in core makes its own. */
export type Generator = {
  /** Uniform on [0, 1), 53 bits. */
  readonly next: () => number;
  /** Fills the list with words, each uniform on 0 to 2^32 - 1: the quick way to many draws. */
  readonly fillWords: (words: Uint32Array) => void;
  /** An independent stream that depends on the seed and this name only, so that a new use does not shift an old one. */
  readonly split: (name: string) => Generator;
};
