import fc from "fast-check";
import { expect, it } from "vitest";
import { cellGuard } from "../../../../src/core/records/exports/cell-guard.ts";
import { law } from "../../../support/law.ts";

// The list of OWASP, CSV Injection: = + - @ tab CR LF, full-width forms; and NUL, which some programs skip.
const RUN = ["=1+1", "+1+1", "-1+1", "@SUM(1)", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠a", "\0=1", "-", "--"];

it.each(RUN)("puts an apostrophe before %j, and takes it off again", (cell) => {
  expect(cellGuard.on(cell)).toBe(`'${cell}`);
  expect(cellGuard.off(`'${cell}`)).toBe(cell);
});
it.each(["", "2.31", "-5", "-5.2", "-5,2", "a=b", "T-14", "'", "'2.31", "''", "'-5", " =1"])("lets %j be", (cell) => {
  expect(cellGuard.on(cell)).toBe(cell);
  expect(cellGuard.off(cell)).toBe(cell);
});
it("keeps the apostrophes that stood before a formula", () => {
  expect(cellGuard.on("''=1")).toBe("'''=1");
  expect(cellGuard.off("'''=1")).toBe("''=1");
});

const cell = fc.string({
  unit: fc.constantFrom("'", "=", "-", "+", "@", "\t", "1", ".", "a", "＝", "\0"),
  maxLength: 6,
});
law("the guard comes off as it went on", [cell], (text) => cellGuard.off(cellGuard.on(text)) === text, 2000);
law("two cells never become one", [cell, cell], (a, b) => a === b || cellGuard.on(a) !== cellGuard.on(b), 2000);
law("nothing guarded begins as a formula", [cell], (text) =>
  /^(?:-\d+(?:[.,]\d+)?$|(?![=+\-@＝＋－＠\t\r\n\0]))/.test(cellGuard.on(text)),
);
