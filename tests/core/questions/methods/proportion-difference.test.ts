import fc from "fast-check";
import { expect, it } from "vitest";
import { proportionDifference } from "../../../../src/core/questions/methods/proportion-difference.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

// R. G. Newcombe (1998), Statistics in Medicine 17, 873-890, table II, method 10: recalled, not looked up. Four printed decimals.
it.each([
  [56, 70, 48, 80, 0.0524, 0.3339],
  [9, 10, 3, 10, 0.1705, 0.809],
  [6, 7, 2, 7, 0.0582, 0.8062],
  [5, 56, 0, 29, -0.0381, 0.1926],
  [0, 10, 0, 20, -0.1611, 0.2775],
  [0, 10, 0, 10, -0.2775, 0.2775],
  [10, 10, 0, 20, 0.6791, 1],
  [10, 10, 0, 10, 0.6075, 1],
])("gives what is printed for %i/%i less %i/%i", (k1, n1, k2, n2, low, high) => {
  const got = fieldsOf(proportionDifference, { k1, n1, k2, n2 });
  closeTo(got.ci95_low!, low, 6e-5, { scale: 1 });
  closeTo(got.ci95_high!, high, 6e-5, { scale: 1 });
});

const share = fc.integer({ min: 1, max: 50 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

law("changing the groups about turns the interval round zero", [share, share], ([k1, n1], [k2, n2]) => {
  const one = fieldsOf(proportionDifference, { k1, n1, k2, n2 });
  const other = fieldsOf(proportionDifference, { k1: k2, n1: n2, k2: k1, n2: n1 });
  closeTo(other.difference!, -one.difference!, 1e-12, { scale: 1 });
  closeTo(other.ci95_low!, -one.ci95_high!, 1e-12, { scale: 1 });
});

law(
  "the interval holds the difference, lies within -1 and 1 and is wider at a higher level",
  [share, share],
  ([k1, n1], [k2, n2]) => {
    const one = fieldsOf(proportionDifference, { k1, n1, k2, n2, level: 0.8 });
    const wider = fieldsOf(proportionDifference, { k1, n1, k2, n2, level: 0.99 });
    expect(wider.ci95_low!).toBeGreaterThanOrEqual(-1 - 1e-12);
    expect(wider.ci95_high!).toBeLessThanOrEqual(1 + 1e-12);
    const within = [wider.ci95_low!, one.ci95_low!, one.difference!, one.ci95_high!, wider.ci95_high!];
    expect(within.every((each, at) => at === 0 || each >= within[at - 1]! - 1e-12)).toBe(true);
  },
);

it.each([
  [{ k1: 1, n1: 0, k2: 1, n2: 2 }, "too-few-records"],
  [{ k1: 3, n1: 2, k2: 1, n2: 2 }, "out-of-domain"],
  [{ k1: 1, n1: 2, k2: 0.5, n2: 2 }, "out-of-domain"],
])("declines %j", (inputs, code) => expect(refusalOf(proportionDifference, inputs)).toBe(code));
