// Ends of profile intervals where records are nearly parted, and the profile may have several tops: from nowhere else is one found that is higher.
import { expect, it } from "vitest";
import { chiSquareQuantile, generatorFromSeed, normalQuantile } from "../../../../src/core/numerics/index.ts";
import { firthFit } from "../../../../src/core/questions/fits/firth-fit.ts";
import { firthLogistic } from "../../../../src/core/questions/methods/firth-logistic.ts";
import { fieldsOf } from "../../../support/fields-of.ts";

it("an end is where the highest of all tops has fallen by half a chi square", () => {
  const limit = chiSquareQuantile(0.95, 1) / 2;
  let ends = 0;
  for (const seed of [2, 5, 8, 11, 14, 17]) {
    const generator = generatorFromSeed(seed);
    const normal = () => normalQuantile(generator.next() || 0.5);
    const [n, p] = [18, 3];
    const columns = Array.from({ length: p }, () => Float64Array.from({ length: n }, normal));
    const b = Array.from({ length: p + 1 }, () => 3 * normal());
    const y = Float64Array.from({ length: n }, (_, i) => {
      const eta = columns.reduce((sum, x, j) => sum + x[i]! * b[j + 1]!, b[0]!);
      return generator.next() < 1 / (1 + Math.exp(-eta)) ? 1 : 0;
    });
    const found = fieldsOf(firthLogistic, {
      y,
      ...Object.fromEntries(columns.map((x, j) => [`x${j + 1}`, x])),
    }) as unknown as Record<"coef" | "ci95_low_profile" | "ci95_high_profile", (number | null)[]>;
    const data = { X: [new Float64Array(n).fill(1), ...columns], y };
    const top = firthFit(data, Float64Array.from(found.coef as number[]))!;
    for (const field of ["ci95_low_profile", "ci95_high_profile"] as const)
      for (const [at, end] of found[field].entries()) {
        if (end === null) continue;
        ends++;
        for (let start = 0; start < 30; start++) {
          const place = top.place.map((one, j) => (j === at ? end : one + (start < 15 ? 2 : 8) * normal()));
          const fit = firthFit(data, place, at);
          if (fit) expect(top.height - fit.height).toBeGreaterThan(limit - 1e-5);
        }
      }
  }
  expect(ends).toBeGreaterThan(40);
});
