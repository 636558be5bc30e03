import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { binomialDensity, binomialLowerTail, chiSquareUpperTail } from "../../numerics/index.ts";
import { wholeCounts } from "../inputs/whole-counts.ts";

/** Whether two yes-or-no notes of the same pieces lean to one side: only the pieces on which they differ say so. */
export const mcnemar: Method = {
  id: "mcnemar",
  name: "McNemar's test of two paired notes",
  answers: "words",
  needs: {},
  inputs: {
    both: { kind: "number", atLeast: 0, whole: true, optional: true, meaning: "pieces of which both say yes" },
    only_a: { kind: "number", atLeast: 0, whole: true, meaning: "pieces of which only the first says yes" },
    only_b: { kind: "number", atLeast: 0, whole: true, meaning: "pieces of which only the second says yes" },
    neither: { kind: "number", atLeast: 0, whole: true, optional: true, meaning: "pieces of which neither says yes" },
  },
  fields: {
    difference: { meaning: "share said by the first less share said by the second; absent without all four counts" },
    p_exact: { meaning: "two-sided exact p; one by convention where they never differ" },
    p_mid: { meaning: "exact p less the probability of what was seen" },
    chi2: { meaning: "chi-square, 1 degree of freedom" },
    p: { meaning: "its p" },
    chi2_continuity: { meaning: "chi-square with continuity correction" },
    p_continuity: { meaning: "its p" },
    chosen: { meaning: "which p to take, and why" },
  },
  source: {
    citation:
      "McNemar (1947), Psychometrika 12, 153-157; Fagerland, Lydersen and Laake (2013), BMC Med. Res. Meth. 13, 91",
    basis: "published",
  },
  run: (inputs) => {
    const differing = wholeCounts(inputs, ["only_a", "only_b"]);
    if (!differing.ok) return differing;
    const agreeing = wholeCounts({ both: 0, neither: 0, ...inputs }, ["both", "neither"]);
    if (!agreeing.ok) return agreeing;
    const [[a = 0, b = 0], [both = 0, neither = 0]] = [differing.value, agreeing.value];
    const [n, all] = [a + b, a + b + both + neither];
    if (all === 0) return declined("too-few-records", { have: 0, need: 1 });
    const difference = inputs.both === undefined || inputs.neither === undefined ? null : (a - b) / all;
    if (n === 0) return succeeded({ difference, p_exact: 1, chi2: null, chosen: "p is one: the two never differ" });
    const exact = Math.min(1, 2 * binomialLowerTail(Math.min(a, b), n, 0.5));
    const chi2 = (a - b) ** 2 / n;
    const corrected = Math.max(0, Math.abs(a - b) - 1) ** 2 / n;
    return succeeded({
      difference,
      p_exact: exact,
      p_mid: a === b ? 1 - binomialDensity(a, n, 0.5) : exact - binomialDensity(a, n, 0.5),
      chi2,
      p: chiSquareUpperTail(chi2, 1),
      chi2_continuity: corrected,
      p_continuity: chiSquareUpperTail(corrected, 1),
      chosen:
        n < 25
          ? "take the exact or mid p: fewer than 25 pieces differ"
          : "25 pieces or more differ, so all agree closely",
    });
  },
};
