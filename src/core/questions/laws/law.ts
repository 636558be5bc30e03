/** A law with its parameters put in. */
export type Law = {
  readonly lower: (x: number) => number;
  readonly upper: (x: number) => number;
  readonly density?: (x: number) => number;
  readonly quantile: (p: number) => number;
  readonly upperQuantile: (p: number) => number;
  /** log P(X > x) where the tail itself may be below every double. */
  readonly logUpper?: (x: number) => number;
  readonly logLower?: (x: number) => number;
};
