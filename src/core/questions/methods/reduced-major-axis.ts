import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { mean, standardDeviation, tQuantile } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";

const needs = { rows: 3, distinct: { x: 2, y: 2 } };

/** The line whose slope is the ratio of the spreads, with the sign of the correlation: how two quantities scale, neither explaining the other. */
export const reducedMajorAxis: Method = {
  id: "reduced-major-axis",
  name: "Reduced major axis",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "one quantity" },
    y: { kind: "quantities", meaning: "the other" },
    level: levelInput,
  },
  fields: {
    slope: {
      meaning: "standard deviation of y over that of x, with the sign of r; never zero, so no test of a relation",
    },
    intercept: { meaning: "constant" },
    ci95_low: { meaning: "interval of the slope, lower" },
    ci95_high: { meaning: "upper" },
    r: { meaning: "correlation: it says whether there is a relation" },
    set_aside: { meaning: "records without both values" },
  },
  source: {
    citation: "Jolicoeur and Mosimann (1968), Biometrics 24, 339-354; McArdle (1988), Can. J. Zool. 66, 2329-2339",
    basis: "published",
  },
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const [r, df] = [correlation(x, y), x.length - 2];
    if (!(Math.abs(r) > 1e-15))
      return declined("out-of-domain", {
        name: "x and y",
        needed: "quantities that vary together; their correlation is zero",
      });
    const slope = (Math.sign(r) * standardDeviation(y)) / standardDeviation(x);
    if (!Number.isFinite(slope)) return declined("not-finite", { name: "the slope" });
    const B = (tQuantile((1 + level) / 2, df) ** 2 * Math.max(0, 1 - r * r)) / df;
    const ends = [slope * (Math.sqrt(B + 1) - Math.sqrt(B)), slope * (Math.sqrt(B + 1) + Math.sqrt(B))];
    return succeeded({
      slope,
      intercept: mean(y) - slope * mean(x),
      ci95_low: Math.min(...ends),
      ci95_high: Math.max(...ends),
      r,
      set_aside: pair.value.setAside,
    });
  },
};
