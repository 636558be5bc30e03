import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { alphaOfGrades, type GradeDistance, gradeCounts, gradeDistances } from "../agreement/alpha-of-grades.ts";
import { gradedColumns } from "../agreement/graded-columns.ts";
import { knownNumber } from "../inputs/known-number.ts";

const MOST_LEVELS = 10_000;

/** One list of grades for each grader, or a record of such lists by name. */
const graders = (given: unknown): readonly unknown[] =>
  Array.isArray(given) ? given : typeof given === "object" && given !== null ? Object.values(given) : [];

/** Agreement of any number of graders, some of whom may have left pieces out. */
export const krippendorffAlpha: Method = {
  id: "krippendorff-alpha",
  name: "Krippendorff's alpha",
  answers: "agreement",
  needs: { rows: 2 },
  inputs: {
    ratings: {
      kind: "table",
      meaning: "one list of grades (numbers or words) for each grader, in the same order of pieces; null where missing",
    },
    levels: {
      kind: "grades",
      optional: true,
      meaning: "all grades, lowest first; words have no order without it, and numbers stand by size",
    },
  },
  fields: {
    nominal: { meaning: "grades are names" },
    ordinal: { meaning: "grades have an order; withheld for words without levels" },
    interval: { meaning: "grades have distances; withheld for words" },
    ratio: { meaning: "grades have a zero; withheld for words and with a grade below zero" },
    graders: { meaning: "how many graded" },
    pieces: { meaning: "pieces that two graders or more have graded" },
    grades: { meaning: "grades given to them" },
    set_aside: { meaning: "pieces with fewer than two grades" },
  },
  source: { citation: "Krippendorff (2011), Computing Krippendorff's Alpha-Reliability", basis: "published" },
  run: (inputs) => {
    const lists = graders(inputs.ratings);
    if (lists.length < 2)
      return declined("out-of-domain", {
        name: "ratings",
        needed: "one list of grades for each of at least two graders",
      });
    const graded = gradedColumns(
      lists,
      lists.map((_, at) => `ratings, grader ${at + 1}`),
      inputs.levels,
    );
    if (!graded.ok) return graded;
    const { codes, levels, numbers, isOrdered } = graded.value;
    if (levels.length > MOST_LEVELS)
      return declined("too-large", { name: "ratings", most: `${MOST_LEVELS} different grades` });
    const all = Array.from(codes[0] ?? [], (_, piece) =>
      codes.map((column) => column[piece] ?? -1).filter((code) => code >= 0),
    );
    const pieces = all.filter((grades) => grades.length > 1);
    if (pieces.length < 2) return declined("too-few-records", { have: pieces.length, need: 2 });
    const counts = gradeCounts(pieces, levels.length);
    const alpha = (distance: GradeDistance) => knownNumber(alphaOfGrades(pieces, levels.length, distance));
    const nominal = alpha(gradeDistances.nominal());
    if (nominal === null) return declined("no-spread", { column: "grades" });
    return succeeded({
      nominal,
      ordinal: isOrdered ? alpha(gradeDistances.ordinal(counts)) : null,
      interval: numbers ? alpha(gradeDistances.interval(numbers)) : null,
      ratio: numbers?.every((each) => each >= 0) ? alpha(gradeDistances.ratio(numbers)) : null,
      graders: lists.length,
      pieces: pieces.length,
      grades: counts.reduce((sum, each) => sum + each, 0),
      set_aside: all.length - pieces.length,
    });
  },
};
