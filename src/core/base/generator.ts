/** A seeded stream of random numbers. It is always an argument: nothing in core makes its own. */
export type Generator = {
  /** Uniform on [0, 1), 53 bits. */
  readonly next: () => number;
  /** An independent stream that depends on the seed and this name only, so that a new use does not shift an old one. */
  readonly split: (name: string) => Generator;
};
