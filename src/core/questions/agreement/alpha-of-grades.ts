import { compensatedSum } from "../../numerics/index.ts";

/** The squared difference of two grades by their places among the levels. */
export type GradeDistance = (a: number, b: number) => number;

/**
 * Krippendorff's alpha: 1 less observed over expected disagreement, for any number of people, some grades missing.
 *
 *   Do = (1/n) sum over pieces of sum over ordered pairs of its grades of d(a, b) / (m - 1),   De = (1/(n(n - 1))) sum over all ordered pairs of d(a, b)
 *
 * pieces: the grades given to each piece, as places among the levels; a piece with fewer than two makes no pair and drops out. n: grades of the
 * others. distance: symmetric, zero for a grade and itself. NaN when all grades are one.
 * Source: K. Krippendorff (2011), Computing Krippendorff's Alpha-Reliability; (2004) Content Analysis, chapter 11.
 */
export function alphaOfGrades(pieces: readonly (readonly number[])[], levels: number, distance: GradeDistance): number {
  const paired = pieces.filter((grades) => grades.length > 1);
  const counts = gradeCounts(paired, levels);
  const n = counts.reduce((sum, each) => sum + each, 0);
  const observed = paired.map((grades) => {
    let sum = 0;
    for (let i = 0; i < grades.length; i++)
      for (let j = 0; j < i; j++) sum += distance(grades[i] as number, grades[j] as number);
    return sum / (grades.length - 1);
  });
  const expected = new Float64Array(levels);
  for (let a = 0; a < levels; a++) {
    let sum = 0;
    for (let b = 0; b < a; b++) if (counts[b] !== 0) sum += (counts[b] as number) * distance(a, b);
    expected[a] = counts[a] === 0 ? 0 : (counts[a] as number) * sum;
  }
  const chance = compensatedSum(expected);
  return chance > 0 ? 1 - ((n - 1) * compensatedSum(observed)) / chance : Number.NaN;
}

/** How often each grade was given to the pieces. */
export function gradeCounts(pieces: readonly (readonly number[])[], levels: number): Float64Array {
  const counts = new Float64Array(levels);
  for (const grades of pieces) for (const grade of grades) counts[grade] = (counts[grade] as number) + 1;
  return counts;
}

/** The four usual distances. counts: how often each level was given, in their order; numbers: what the levels are as numbers. */
export const gradeDistances = {
  nominal: (): GradeDistance => (a, b) => (a === b ? 0 : 1),
  /** Grades from one to the other, those at the two ends by half. */
  ordinal: (counts: Float64Array): GradeDistance => {
    const upTo = new Float64Array(counts.length);
    for (let at = 0; at < counts.length; at++)
      upTo[at] = (counts[at] as number) + (at > 0 ? (upTo[at - 1] as number) : 0);
    const middle = upTo.map((sum, at) => sum - (counts[at] as number) / 2);
    return (a, b) => ((middle[a] as number) - (middle[b] as number)) ** 2;
  },
  interval:
    (numbers: Float64Array): GradeDistance =>
    (a, b) =>
      ((numbers[a] as number) - (numbers[b] as number)) ** 2,
  /** numbers: zero or above. */
  ratio:
    (numbers: Float64Array): GradeDistance =>
    (a, b) =>
      a === b
        ? 0
        : (((numbers[a] as number) - (numbers[b] as number)) / ((numbers[a] as number) + (numbers[b] as number))) ** 2,
} as const;
