import { it } from "vitest";
import { normalQuantile, quickNormalQuantile } from "../../../../src/core/numerics/index.ts";
import { closeTo } from "../../../support/close-to.ts";

it("agrees with the quantile that iterates, on a grid from the far tail to the middle", () => {
  for (let k = 1; k <= 400; k++) {
    const p = 10 ** (-k / 8);
    closeTo(quickNormalQuantile(p), normalQuantile(p), 1e-14);
  }
  for (let k = 1; k < 1000; k++) if (k !== 500) closeTo(quickNormalQuantile(k / 1000), normalQuantile(k / 1000), 1e-13);
});
it("is the printed 97.5 % point", () => closeTo(quickNormalQuantile(0.975), 1.959963984540054, 1e-15));
