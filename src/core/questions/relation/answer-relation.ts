import type { Caution, Check, Estimate, Finding } from "../../base/index.ts";
import { sumOfSquares } from "../../numerics/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import type { LinearFit } from "../fits/linear-fit.ts";
import { linearFit } from "../fits/linear-fit.ts";
import { slopesWithinGroups } from "../fits/slopes-within-groups.ts";
import { analysisOfCovariance } from "../methods/analysis-of-covariance.ts";
import { ordinaryLeastSquares } from "../methods/ordinary-least-squares.ts";
import { powerLaw } from "../methods/power-law.ts";
import { refused } from "../refused.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { answerWithoutLine } from "./answer-without-line.ts";
import { correctedSlopes } from "./corrected-slopes.ts";
import { groupsFound } from "./groups-found.ts";
import { influenceFound } from "./influence-found.ts";
import type { RelationDesign } from "./relation-design.ts";
import { relationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { groupSentence, relationSentence } from "./relation-sentence.ts";
import { shapeChecks } from "./shape-checks.ts";
import { sharedFound } from "./shared-found.ts";
import { slopeEstimate } from "./slope-estimate.ts";
import type { SlopeInterval } from "./slope-interval.ts";
import { halfWidth, INTERVAL_NEEDS, slopeInterval } from "./slope-interval.ts";
import { spreadCheck } from "./spread-check.ts";

const slopeName = (input: RelationInput, at: number): string =>
  `${input.powerLaw ? "exponent" : "slope"} of ${columnInWords(input.y)} on ${columnInWords(input.x[at] ?? input.y)}`;

function commonSlopes(
  input: RelationInput,
  design: RelationDesign,
  fit: LinearFit,
  interval: SlopeInterval,
): Estimate[] {
  return design.slopes.map((place, at) =>
    slopeEstimate(
      slopeName(input, at),
      fit.coefficients[place] ?? Number.NaN,
      halfWidth(interval, place),
      interval.standardErrors[place] ?? Number.NaN,
      interval.degreesOfFreedom[place] ?? Number.NaN,
      design.shown[at] ?? { factor: 1, unit: "1" },
    ),
  );
}

/** A slope for each group by itself; groups with too few records or no spread have none. */
function groupSlopes(input: RelationInput, design: RelationDesign): readonly { group: string; slope: Estimate }[] {
  const [x, groups, shown] = [design.x[0], design.groups, design.shown[0]];
  if (!input.within || !x || !groups || !shown || design.x.length !== 1) return [];
  return slopesWithinGroups(x, design.y, groups.codes, groups.names.length).fits.flatMap((fit, at) => {
    if (!fit || fit.degreesOfFreedom < 1) return [];
    const group = groups.names[at] ?? "";
    const [value, se, high] = [fit.coefficients[1] as number, fit.standardErrors[1] as number, fit.high[1] as number];
    return [
      {
        group,
        slope: slopeEstimate(
          `${slopeName(input, 0)} within ${group}`,
          value,
          high - value,
          se,
          fit.degreesOfFreedom,
          shown,
        ),
      },
    ];
  });
}

/**
 * The answer to `Y against X`: slopes with intervals, and every check that could make them mislead (within before across, one piece, pieces
 * of one tree, measurement error, shared ancestors, bends, uneven scatter). Refuses where the records cannot carry a line.
 */
export function answerRelation(input: RelationInput): Finding {
  const design = relationDesign(input);
  const other = answerWithoutLine(input, design);
  if (other) return other;
  const fit = linearFit(design.columns, design.y);
  if (fit.rank < design.columns.length) {
    const which = fit.dependent.map((place) => design.slopes.indexOf(place)).filter((at) => at >= 0);
    return refused("collinear", {
      column:
        which.length > 0
          ? which.map((at) => columnInWords(input.x[at] ?? input.y)).join(" and ")
          : input.x.map(columnInWords).join(" and "),
    });
  }
  if (fit.residualSumOfSquares <= 1e-20 * sumOfSquares(design.y))
    return refused("perfect-fit", { column: columnInWords(input.y) });
  const spreadP = spreadCheck(fit, design.x);
  const shared = sharedClusters(input.table, design.sample);
  const interval = slopeInterval(fit, design.slopes, shared, spreadP, input.by);
  if ((input.by === "cluster-robust" || input.by === "robust-se") && interval.method.id !== input.by)
    return refused("out-of-domain", { name: input.by, needed: INTERVAL_NEEDS[input.by] });
  const slopes = commonSlopes(input, design, fit, interval);
  const groups = groupsFound(input, design);
  const shape = shapeChecks(input, design, fit, spreadP);
  const corrected = correctedSlopes(input, design, slopes);
  const carrying = influenceFound(input, design, fit);
  const own = groupSlopes(input, design);
  const ancestors = sharedFound(input, design, slopes);
  const cautions: readonly Caution[] = [
    ...shape.cautions,
    ...corrected.cautions,
    ...carrying.cautions,
    ...commonCautions(design.sample, input.asked, 10, shared),
    ...ancestors.cautions,
    ...groups.cautions,
  ];
  const checks: Check[] = [
    ...shape.checks,
    ...carrying.checks,
    ...corrected.checks,
    ...groups.checks,
    ...ancestors.checks,
  ];
  if (shared) {
    const cost =
      halfWidth(interval, design.slopes[0] ?? 0) /
      ((fit.high[design.slopes[0] ?? 0] as number) - (fit.coefficients[design.slopes[0] ?? 0] as number));
    checks.push({
      id: "pieces-share-cost",
      name: "what sharing costs",
      value: cost,
      passed: true,
      sentence: `Counting the pieces of one ${shared.column.replaceAll("_", " ")} together makes the interval ${Number(cost.toPrecision(2))} times as wide.`,
    });
  }
  const usual = interval.method === ordinaryLeastSquares;
  const method = usual && input.powerLaw ? powerLaw : usual && design.groups ? analysisOfCovariance : interval.method;
  const misleading = groups.misleading;
  return finding({
    kind: "relation",
    table: input.table,
    sentence: `${
      own.length > 0
        ? groupSentence(input, own, design.sample.rows.length)
        : relationSentence(input, slopes, {
            records: design.sample.rows.length,
            parameters: fit.rank,
            misleading: misleading?.slope ? { ...misleading, slope: misleading.slope } : null,
          })
    }${ancestors.sentence}`,
    estimate:
      own.length > 0
        ? [
            ...own.map(({ slope }) => slope),
            ...slopes.map((slope) => ({ ...slope, name: `${slope.name}, common to all` })),
            ...groups.estimates,
          ]
        : [...slopes, ...corrected.estimates, ...groups.estimates],
    rows: { used: design.sample.rows, setAside: design.sample.setAside },
    checks,
    cautions,
    method,
    chosenBecause: interval.because,
    claims:
      own.length > 0
        ? own.map(({ slope }) => slope)
        : misleading?.slope
          ? [misleading.slope].filter(() => misleading.contradicts)
          : slopes,
    asked: input.asked,
    ...(ancestors.seed === undefined ? {} : { seed: ancestors.seed }),
    columns: [input.y, ...input.x, ...input.allowingFor, ...(input.within ? [input.within] : [])],
  });
}
