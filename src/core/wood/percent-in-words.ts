/** A fraction as percent with four digits at most: 0.45 -> "45 %". */
export const percentInWords = (fraction: number): string => `${Number((100 * fraction).toPrecision(4))} %`;
