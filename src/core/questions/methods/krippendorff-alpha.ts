import type { Method, MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";

/** How unlike two grades are: places of the grades in rising order, the grades, and how often each stands in a pair. */
type Distance = (a: number, b: number, grades: Float64Array, counts: Float64Array) => number;

const distances: Readonly<Record<string, Distance>> = {
  nominal: (a, b) => (a === b ? 0 : 1),
  ordinal: (a, b, _, counts) => {
    if (a === b) return 0;
    let between = 0;
    for (let g = Math.min(a, b); g <= Math.max(a, b); g++) between += counts[g] as number;
    return (between - ((counts[a] as number) + (counts[b] as number)) / 2) ** 2;
  },
  interval: (a, b, grades) => ((grades[a] as number) - (grades[b] as number)) ** 2,
  ratio: (a, b, grades) => {
    const sum = (grades[a] as number) + (grades[b] as number);
    return sum === 0 ? 0 : (((grades[a] as number) - (grades[b] as number)) / sum) ** 2;
  },
};

/** Coincidences of grades within pieces that two graders or more have graded: o[a][b] sums 1 / (graders - 1) over ordered pairs. */
function coincidences(pieces: readonly (readonly number[])[]): {
  readonly grades: Float64Array;
  readonly o: Float64Array;
} {
  const grades = Float64Array.from([...new Set(pieces.flat())].sort((a, b) => a - b));
  const place = new Map(Array.from(grades, (grade, at) => [grade, at]));
  const o = new Float64Array(grades.length ** 2);
  for (const piece of pieces)
    for (const [i, one] of piece.entries())
      for (const [j, other] of piece.entries())
        if (i !== j) {
          const at = (place.get(one) ?? 0) * grades.length + (place.get(other) ?? 0);
          o[at] = (o[at] as number) + 1 / (piece.length - 1);
        }
  return { grades, o };
}

/** One less the disagreement seen over the disagreement that chance would give; null where chance gives none. */
function alpha(grades: Float64Array, o: Float64Array, distance: Distance): number | null {
  const size = grades.length;
  const counts = new Float64Array(size);
  for (let a = 0; a < size; a++)
    for (let b = 0; b < size; b++) counts[a] = (counts[a] as number) + (o[a * size + b] as number);
  const all = counts.reduce((sum, n) => sum + n, 0);
  let [seen, chance] = [0, 0];
  for (let a = 0; a < size; a++)
    for (let b = 0; b < size; b++) {
      const unlike = distance(a, b, grades, counts);
      seen += (o[a * size + b] as number) * unlike;
      chance += (counts[a] as number) * (counts[b] as number) * unlike;
    }
  return chance > 0 ? 1 - ((all - 1) * seen) / chance : null;
}

/** The grades of each piece that two graders or more have graded, out of one list a grader. */
function gradedPieces({ ratings }: MethodInputs): Outcome<readonly (readonly number[])[]> {
  const needed = "one list of grades for each grader, all of one length, missing grades null";
  const wrong = declined("out-of-domain", { name: "ratings", needed });
  if (!Array.isArray(ratings) || ratings.length < 2) return wrong;
  const graders: readonly unknown[] = ratings;
  const length = Array.isArray(graders[0]) ? graders[0].length : 0;
  const isGrade = (grade: unknown): grade is number | null =>
    grade === null || (typeof grade === "number" && Math.abs(grade) !== Number.POSITIVE_INFINITY);
  const isGrader = (list: unknown): list is readonly (number | null)[] =>
    Array.isArray(list) && list.length === length && list.every(isGrade);
  if (!graders.every(isGrader)) return wrong;
  const pieces = Array.from({ length }, (_, piece) =>
    graders.flatMap((list) => {
      const grade = list[piece];
      return typeof grade === "number" && !Number.isNaN(grade) ? [grade] : [];
    }),
  ).filter((piece) => piece.length > 1);
  return pieces.length < 2 ? declined("too-few-records", { have: pieces.length, need: 2 }) : succeeded(pieces);
}

/** Agreement of any number of graders, some of whom may have left pieces out. */
export const krippendorffAlpha: Method = {
  id: "krippendorff-alpha",
  name: "Krippendorff's alpha",
  answers: "agreement",
  needs: { rows: 2 },
  inputs: {
    ratings: {
      kind: "table",
      meaning: "one list of grades (numbers) for each grader, in the same order of pieces; null where missing",
    },
  },
  fields: {
    nominal: { meaning: "grades are names" },
    ordinal: { meaning: "grades have an order" },
    interval: { meaning: "grades have distances" },
    ratio: { meaning: "grades have a zero; absent with a grade below zero" },
    pieces: { meaning: "pieces that two graders or more have graded" },
  },
  source: { citation: "Krippendorff (2011), Computing Krippendorff's Alpha-Reliability", basis: "published" },
  run: (inputs) => {
    const pieces = gradedPieces(inputs);
    if (!pieces.ok) return pieces;
    const { grades, o } = coincidences(pieces.value);
    if (grades.length < 2) return declined("no-spread", { column: "grades" });
    if (grades.length > 1000) return declined("too-large", { name: "ratings", most: "1,000 different grades" });
    const found = Object.entries(distances).map(([name, distance]) => [name, alpha(grades, o, distance)] as const);
    return succeeded({
      ...Object.fromEntries(found),
      ...((grades[0] as number) < 0 ? { ratio: null } : {}),
      pieces: pieces.value.length,
    });
  },
};
