import { expect, it } from "vitest";
import { addressFromHash, recordsAddress } from "../../../src/app/state/records-address.ts";

it.each([
  ["#records/tops.csv", { file: "records/tops.csv", table: 1 }],
  ["#records/tops.csv?table=2&row=17&col=3", { file: "records/tops.csv", table: 2, row: 17, col: 3 }],
  ["#book.xlsx?named=Sheet%202&row=4", { file: "book.xlsx", table: 1, named: "Sheet 2", row: 4 }],
  ["#my%20%3F%23%25.xlsx?row=1", { file: "my ?#%.xlsx", table: 1, row: 1 }],
] as const)("%s names its table, and is its link", (hash, address) => {
  expect(addressFromHash(hash)).toEqual(address);
  expect(recordsAddress(address)).toBe(hash);
});

it.each(["#stiffer-tops.md", "#contents", "", "#main", "#%E0%A4%A.csv"])("%s names no table", (hash) =>
  expect(addressFromHash(hash)).toBeNull(),
);

it("takes only whole numbers from 1", () =>
  expect(addressFromHash("#a.csv?row=0&col=-1&table=1e9")).toEqual({ file: "a.csv", table: 1 }));
