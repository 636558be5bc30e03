import fc from "fast-check";
import { expect, it } from "vitest";
import { rowsToDraw } from "../../../src/app/views/rows-to-draw.ts";
import { law } from "../../support/law.ts";

law(
  "rows drawn and gaps stand for every row once, in order, the active one drawn",
  [fc.nat(500), fc.nat(60), fc.nat(600), fc.nat(600)],
  (first, more, active, count) => {
    let next = 0;
    const drawn: number[] = [];
    for (const part of rowsToDraw(first, first + more, active, count)) {
      if ("gap" in part) {
        expect(part.before - part.gap).toBe(next);
        next = part.before;
      } else {
        expect(part.position).toBe(next++);
        drawn.push(part.position);
      }
    }
    expect(next).toBe(count);
    if (count > 0) expect(drawn).toContain(Math.min(active, count - 1));
    expect(drawn.length).toBeLessThanOrEqual(more + 2);
  },
);

it("draws nothing of nothing", () => expect(rowsToDraw(0, 40, 0, 0)).toEqual([]));
