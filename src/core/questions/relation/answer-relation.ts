import type { Caution, Check, Estimate, Finding } from "../../base/index.ts";
import { sumOfSquares } from "../../numerics/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { finding } from "../finding.ts";
import { analysisOfCovariance } from "../methods/analysis-of-covariance.ts";
import type { LinearFit } from "../methods/linear-fit.ts";
import { linearFit } from "../methods/linear-fit.ts";
import { ordinaryLeastSquares } from "../methods/ordinary-least-squares.ts";
import { powerLaw } from "../methods/power-law.ts";
import { slopesWithinGroups } from "../methods/slopes-within-groups.ts";
import { refused } from "../refused.ts";
import { answerWithoutLine } from "./answer-without-line.ts";
import { correctedSlopes } from "./corrected-slopes.ts";
import { groupsBehindSlopes } from "./groups-behind-slope.ts";
import { influenceFound } from "./influence-found.ts";
import { relationCautions } from "./relation-cautions.ts";
import type { RelationDesign } from "./relation-design.ts";
import { relationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { groupSentence, relationSentence } from "./relation-sentence.ts";
import { shapeChecks } from "./shape-checks.ts";
import { sharedClusters } from "./shared-clusters.ts";
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
  const groups = groupsBehindSlopes(input, design);
  const shape = shapeChecks(input, design, fit, spreadP);
  const corrected = correctedSlopes(input, design, slopes);
  const carrying = influenceFound(input, design, fit);
  const own = groupSlopes(input, design);
  const cautions: Caution[] = [
    ...shape.cautions,
    ...corrected.cautions,
    ...carrying.cautions,
    ...relationCautions(input, design),
  ];
  const checks: Check[] = [...shape.checks, ...carrying.checks, ...corrected.checks];
  const behind: Estimate[] = [];
  for (const one of groups) {
    const group = columnInWords(one.column);
    const [across, within] = [one.pooled.coefficients[1] as number, one.common.coefficients[one.at] as number];
    const moves = (slope: number) => (slope > 0 ? "rises" : "falls");
    if (one.contradicts)
      cautions.push({
        code: "across-contradicts-within",
        facts: { group, across: moves(across), within: moves(within) },
      });
    else if (one.explains) cautions.push({ code: "groups-explain-slope", facts: { group } });
    const differ = one.sameSlopes < 0.05 / groups.length;
    if (differ && !input.within) cautions.push({ code: "slopes-differ-by-group", facts: { group } });
    checks.push({
      id: `within-${one.column.name}`,
      name: `slope within ${group}`,
      value: one.sameSlopes,
      limit: 0.05 / groups.length,
      passed: !one.contradicts && !one.explains && !differ,
      sentence: `Across all records the slope ${moves(across)}, within each ${group} it ${moves(within)}; the groups' own slopes ${differ ? "differ" : "do not differ more than chance would make them"}.`,
    });
    const shown = design.shown[0];
    if (!shown) continue;
    const [fitOne, at, name] = design.groups
      ? ([one.pooled, 1, `slope across all records of ${columnInWords(input.y)}`] as const)
      : ([one.common, one.at, `slope within ${group}`] as const);
    if (one.contradicts || one.explains || design.groups)
      behind.push(
        slopeEstimate(
          input.powerLaw ? name.replace("slope", "exponent") : name,
          fitOne.coefficients[at] as number,
          (fitOne.high[at] as number) - (fitOne.coefficients[at] as number),
          fitOne.standardErrors[at] as number,
          fitOne.degreesOfFreedom,
          shown,
        ),
      );
  }
  if (shared) {
    const cost =
      halfWidth(interval, design.slopes[0] ?? 0) /
      ((fit.high[design.slopes[0] ?? 0] as number) - (fit.coefficients[design.slopes[0] ?? 0] as number));
    cautions.push({
      code: "pieces-share",
      facts: {
        column: shared.column.replaceAll("_", " "),
        groups: shared.clusters,
        records: design.sample.rows.length,
      },
    });
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
  const misleading = groups.find((one) => one.contradicts) ?? groups.find((one) => one.explains);
  const withinSlope = design.groups ? undefined : behind[0];
  return finding({
    kind: "relation",
    table: input.table,
    sentence:
      own.length > 0
        ? groupSentence(input, own, design.sample.rows.length)
        : relationSentence(input, slopes, {
            records: design.sample.rows.length,
            parameters: fit.rank,
            misleading:
              misleading && withinSlope
                ? { group: columnInWords(misleading.column), slope: withinSlope, contradicts: misleading.contradicts }
                : null,
          }),
    estimate:
      own.length > 0
        ? [
            ...own.map(({ slope }) => slope),
            ...slopes.map((slope) => ({ ...slope, name: `${slope.name}, common to all` })),
            ...behind,
          ]
        : [...slopes, ...corrected.estimates, ...behind],
    rows: { used: design.sample.rows, setAside: design.sample.setAside },
    checks,
    cautions,
    method,
    chosenBecause: interval.because,
    columns: [input.y, ...input.x, ...input.allowingFor, ...(input.within ? [input.within] : [])],
  });
}
