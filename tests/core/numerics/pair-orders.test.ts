import fc from "fast-check";
import { expect } from "vitest";
import { pairOrders } from "../../../src/core/numerics/index.ts";
import { law } from "../../support/law.ts";

law(
  "orders of pairs are those of all pairs formed one by one, ties and all",
  [
    fc.array(fc.tuple(fc.integer({ min: -4, max: 4 }), fc.integer({ min: -30, max: 30 })), {
      minLength: 1,
      maxLength: 40,
    }),
  ],
  (rows) => {
    const formed = { concordant: 0, discordant: 0, untiedX: 0, untiedY: 0 };
    for (const [i, [x, y]] of rows.entries())
      for (const [otherX, otherY] of rows.slice(i + 1)) {
        const both = Math.sign(otherX - x) * Math.sign(otherY - y);
        if (both > 0) formed.concordant++;
        if (both < 0) formed.discordant++;
        if (otherX !== x) formed.untiedX++;
        if (otherY !== y) formed.untiedY++;
      }
    expect(
      pairOrders(
        Float64Array.from(rows, ([x]) => x),
        Float64Array.from(rows, ([, y]) => y),
      ),
    ).toEqual(formed);
  },
);
