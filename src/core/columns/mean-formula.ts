/** The formula of a mean of readings as a notebook would write it, so that the same mean there has the same source of error and cancels against it. */
export const meanFormula = (names: readonly string[]): string => `mean(${names.join(", ")})`;

/** The source of error that is the spread of such a mean's readings. */
export const spreadSource = (formula: string): string => `spread of ${formula}`;
