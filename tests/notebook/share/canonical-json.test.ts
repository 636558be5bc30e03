import fc from "fast-check";
import { expect, it } from "vitest";
import { canonicalJson } from "../../../src/notebook/share/canonical-json.ts";
import { law } from "../../support/law.ts";

it("gives the example of the standard (RFC 8785, section 3.2.4)", () => {
  const given =
    '{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001], "string": "\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/", "literals": [null, true, false]}';
  expect(canonicalJson(JSON.parse(given))).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});

it("sorts members by UTF-16 code units (RFC 8785, section 3.2.3)", () => {
  const given = {
    "\u20ac": "Euro Sign",
    "\r": "Carriage Return",
    "\ufb33": "Hebrew Letter Dalet With Dagesh",
    "1": "One",
    "\ud83d\ude00": "Emoji: Grinning Face",
    "\u0080": "Control",
    "\u00f6": "Latin Small Letter O With Diaeresis",
  };
  expect(Object.values(JSON.parse(canonicalJson(given)) as object).sort()).toEqual(Object.values(given).sort());
  const order = [..."\r1"]
    .concat("\u0080", "\u00f6", "\u20ac", "\ud83d\ude00", "\ufb33")
    .map((name) => canonicalJson(given).indexOf(JSON.stringify(name)));
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

// RFC 8785, appendix B: IEEE 754 bits and their text.
it.each([
  ["0000000000000000", "0"],
  ["8000000000000000", "0"],
  ["0000000000000001", "5e-324"],
  ["7fefffffffffffff", "1.7976931348623157e+308"],
  ["4340000000000000", "9007199254740992"],
  ["4430000000000000", "295147905179352830000"],
  ["44b52d02c7e14af5", "9.999999999999997e+22"],
  ["44b52d02c7e14af6", "1e+23"],
  ["444b1ae4d6e2ef4f", "999999999999999900000"],
  ["444b1ae4d6e2ef50", "1e+21"],
  ["3eb0c6f7a0b5ed8d", "0.000001"],
  ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
  ["41b3de4355555553", "333333333.3333332"],
  ["becbf647612f3696", "-0.0000033333333333333333"],
])("writes the double %s as %s", (bits, text) => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  expect(canonicalJson(view.getFloat64(0))).toBe(text);
});

it("refuses what JSON has no word for", () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, () => 0])
    expect(() => canonicalJson({ value })).toThrow(RangeError);
});

law("reads back as what was written, whatever the order of members", [fc.jsonValue()], (value) => {
  const shuffled = (part: unknown): unknown =>
    Array.isArray(part)
      ? part.map(shuffled)
      : typeof part === "object" && part !== null
        ? Object.fromEntries(
            Object.entries(part)
              .reverse()
              .map(([name, inner]) => [name, shuffled(inner)]),
          )
        : part;
  expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
  expect(canonicalJson(shuffled(value))).toBe(canonicalJson(value));
});
