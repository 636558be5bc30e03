// What a statistics script in R takes for steps like ours: numbers measured once on another machine, for orientation only.
// Source: R 4.2.2, MASS 7.3-58.2, reference BLAS, two shared cores of a server processor; milliseconds of processor time, best of one to seven.

type Step = { readonly step: string; readonly at300: number; readonly at100000: number | null };

export const timingsInR: readonly Step[] = [
  { step: "read csv, 17 columns", at300: 2.0, at100000: 436 },
  { step: "formula columns", at300: 0.25, at100000: 17.6 },
  { step: "least squares, one predictor", at300: 0.7, at100000: 68 },
  { step: "least squares, three predictors, with influence", at300: 1.0, at100000: 390 },
  { step: "slopes within species", at300: 1.9, at100000: 290 },
  { step: "Welch anova with all pairs", at300: 12.6, at100000: 22 },
  { step: "Theil-Sen", at300: 15.8, at100000: null },
  { step: "whole script without resampling", at300: 94, at100000: 6444 },
];

/** The table as text, labelled as what it is. */
export const timingsInWords = (): string =>
  [
    "R 4.2.2 on another machine, not measured in this run: ms at 300 rows, at 100,000 rows",
    ...timingsInR.map(
      ({ step, at300, at100000 }) =>
        `  ${step.padEnd(50)}${String(at300).padStart(6)}${(at100000 === null ? "-" : String(at100000)).padStart(8)}`,
    ),
    "",
  ].join("\n");
