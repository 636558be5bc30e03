/** One number with its uncertainty; every field is in the glossary. `value low high` are in `unit` (canonical UCUM spelling, "1" if none). */
export type Estimate = {
  /** What is estimated, in words: "slope of final thickness on stiffness along". */
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Level of the interval, 0.95 as a rule. */
  readonly level: number;
  readonly unit: string;
  readonly standardError?: number;
  readonly degreesOfFreedom?: number;
};
