import type { Method } from "../../base/index.ts";
import { analysisOfCovariance } from "./analysis-of-covariance.ts";
import { anovaNist } from "./anova-nist.ts";
import { binomialTest } from "./binomial-test.ts";
import { blandAltman } from "./bland-altman.ts";
import { bootstrap } from "./bootstrap.ts";
import { cliffDelta } from "./cliff-delta.ts";
import { clusterRobust } from "./cluster-robust.ts";
import { concordance } from "./concordance.ts";
import { deming } from "./deming.ts";
import { descriptive } from "./descriptive.ts";
import { descriptiveNist } from "./descriptive-nist.ts";
import { distribution } from "./distribution.ts";
import { firthLogistic } from "./firth-logistic.ts";
import { fisherExact } from "./fisher-exact.ts";
import { gamesHowell } from "./games-howell.ts";
import { hedgesG } from "./hedges-g.ts";
import { influence } from "./influence.ts";
import { inversePrediction } from "./inverse-prediction.ts";
import { kappa } from "./kappa.ts";
import { kendall } from "./kendall.ts";
import { krippendorffAlpha } from "./krippendorff-alpha.ts";
import { kruskalWallis } from "./kruskal-wallis.ts";
import { leastAbsolute } from "./least-absolute.ts";
import { linearModel } from "./linear-model.ts";
import { mannWhitney } from "./mann-whitney.ts";
import { mcnemar } from "./mcnemar.ts";
import { mixedModel } from "./mixed-model.ts";
import { multipleLeastSquares } from "./multiple-least-squares.ts";
import { oneWayWelch } from "./one-way-welch.ts";
import { ordinaryLeastSquares } from "./ordinary-least-squares.ts";
import { originLeastSquares } from "./origin-least-squares.ts";
import { pAdjust } from "./p-adjust.ts";
import { pairedT } from "./paired-t.ts";
import { partialCorrelation } from "./partial-correlation.ts";
import { pearson } from "./pearson.ts";
import { permutation } from "./permutation.ts";
import { powerCorrelation } from "./power-correlation.ts";
import { powerLaw } from "./power-law.ts";
import { powerOfSlope } from "./power-of-slope.ts";
import { powerProportion } from "./power-proportion.ts";
import { powerT } from "./power-t.ts";
import { proportionDifference } from "./proportion-difference.ts";
import { proportionInterval } from "./proportion-interval.ts";
import { proportionalOdds } from "./proportional-odds.ts";
import { reducedMajorAxis } from "./reduced-major-axis.ts";
import { robustLeastSquares } from "./robust-least-squares.ts";
import { robustRegression } from "./robust-regression.ts";
import { spearman } from "./spearman.ts";
import { theilSen } from "./theil-sen.ts";
import { weightedLeastSquares } from "./weighted-least-squares.ts";
import { welchT } from "./welch-t.ts";
import { york } from "./york.ts";

/** The statistical methods, in the order in which they are shown. */
export const questionMethods: readonly Method[] = [
  ordinaryLeastSquares,
  multipleLeastSquares,
  weightedLeastSquares,
  originLeastSquares,
  linearModel,
  robustLeastSquares,
  clusterRobust,
  mixedModel,
  analysisOfCovariance,
  powerLaw,
  proportionalOdds,
  influence,
  theilSen,
  leastAbsolute,
  robustRegression,
  deming,
  york,
  reducedMajorAxis,
  inversePrediction,
  pearson,
  spearman,
  kendall,
  partialCorrelation,
  powerOfSlope,
  powerCorrelation,
  powerT,
  powerProportion,
  welchT,
  pairedT,
  mannWhitney,
  hedgesG,
  cliffDelta,
  permutation,
  bootstrap,
  oneWayWelch,
  gamesHowell,
  kruskalWallis,
  blandAltman,
  kappa,
  krippendorffAlpha,
  concordance,
  proportionInterval,
  proportionDifference,
  binomialTest,
  pAdjust,
  fisherExact,
  mcnemar,
  firthLogistic,
  anovaNist,
  descriptive,
  descriptiveNist,
  distribution,
];
