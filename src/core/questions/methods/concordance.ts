import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { centralMoments, mean, normalQuantile } from "../../numerics/index.ts";
import { crossProducts } from "../fits/cross-products.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";

const needs = { rows: 3 };

/** How closely two readings of the same pieces fall on the line y = x: Lin's coefficient, with moments divided by n. */
export const concordance: Method = {
  id: "concordance",
  name: "Lin's concordance",
  answers: "agreement",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "readings of the first" },
    y: { kind: "quantities", meaning: "readings of the second, of the same pieces" },
    level: levelInput,
  },
  fields: {
    ccc: { meaning: "concordance, 1 for equal readings" },
    r: { meaning: "correlation: how closely they fall on any line" },
    bias_correction: { meaning: "concordance over correlation: how far that line is from y = x" },
    location_shift: { meaning: "mean x less mean y, over the root of the product of their standard deviations" },
    scale_shift: { meaning: "standard deviation of x over that of y" },
    se_z: { meaning: "standard error on the inverse hyperbolic tangent; withheld for readings that all agree" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
    ccc_n_minus_1: { meaning: "concordance with variances divided by n - 1" },
    set_aside: { meaning: "records without both readings" },
  },
  source: { citation: "Lin (1989), Biometrics 45, 255-268, with the correction of 2000", basis: "published" },
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const n = x.length;
    const [one, two] = [centralMoments(x), centralMoments(y)];
    const [sxx, syy] = [one.m2, two.m2];
    if (!Number.isFinite(sxx) || !Number.isFinite(syy))
      return declined("not-finite", { name: "the scatter of x or y" });
    if (!(sxx > 0) || !(syy > 0)) return declined("no-spread", { column: sxx > 0 ? "y" : "x" });
    const sxy = crossProducts(x, y).xy / n;
    // The mean of the differences, not the difference of the means: a common offset costs no digits.
    const shift = mean(x.map((value, i) => value - (y[i] as number)));
    const ccc = (2 * sxy) / (sxx + syy + shift ** 2);
    if (!Number.isFinite(ccc)) return declined("not-finite", { name: "the concordance" });
    const r = sxy / Math.sqrt(sxx * syy);
    const location = shift / Math.sqrt(Math.sqrt(sxx * syy));
    // Concordance over correlation in closed form, so that no correlation at all does no harm below.
    const bias = (2 * Math.sqrt(sxx) * Math.sqrt(syy)) / (sxx + syy + shift ** 2);
    const rest = (1 - ccc) * (1 + ccc);
    const variance =
      (((1 - r) * (1 + r) * bias ** 2) / rest +
        (2 * ccc ** 2 * bias * (1 - ccc) * location ** 2) / rest ** 2 -
        (ccc ** 2 * bias ** 2 * location ** 4) / (2 * rest ** 2)) /
      (n - 2);
    const error = Math.sqrt(variance);
    // Readings that are all the same on both sides leave nothing but rounding to judge by.
    const isKnown = Number.isFinite(error) && rest > 1e-14;
    const half = normalQuantile((1 + level) / 2) * error;
    const z = Math.atanh(ccc);
    return succeeded({
      ccc,
      r,
      bias_correction: bias,
      location_shift: location,
      scale_shift: Math.sqrt(sxx / syy),
      se_z: isKnown ? error : null,
      ci95_low: isKnown ? Math.tanh(z - half) : null,
      ci95_high: isKnown ? Math.tanh(z + half) : null,
      ccc_n_minus_1: (2 * sxy) / (sxx + syy + (shift ** 2 * (n - 1)) / n),
      set_aside: pair.value.setAside,
    });
  },
};
