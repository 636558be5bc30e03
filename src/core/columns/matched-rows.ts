// Which rows of two tables belong together. Matching is arquero's.
import { table as arqueroTable } from "arquero";
import type { JoinKeys } from "./join-keys.ts";

export type MatchedRows = { readonly lefts: Int32Array; readonly rights: Int32Array };

/**
 * Row numbers of the pairs, in the left table's order, then the right's; right is -1 where nothing matches. A row without a key matches nothing.
 */
export function matchedRows({ left, right }: JoinKeys): MatchedRows {
  const rightRows = Int32Array.from(right.keys()).filter((row) => (right[row] ?? -1) >= 0);
  const leftTable = arqueroTable({
    // A row without a key has a key of its own that no other has.
    key: left.map((place, row) => (place < 0 ? -1 - row : place)),
    left: Int32Array.from(left.keys()),
  });
  const rightTable = arqueroTable({ key: rightRows.map((row) => right[row] ?? -1), right: rightRows });
  const pairs = leftTable.join_left(rightTable, "key") as unknown as {
    array: (name: string) => ArrayLike<number | undefined>;
  };
  const [lefts, rights] = [pairs.array("left"), pairs.array("right")];
  const width = right.length + 1;
  // One number a pair, so that sorting needs no comparison of our own.
  const places = Float64Array.from(lefts, (row, pair) => (row ?? 0) * width + (rights[pair] ?? -1) + 1).sort();
  return {
    lefts: Int32Array.from(places, (place) => Math.floor(place / width)),
    rights: Int32Array.from(places, (place) => (place % width) - 1),
  };
}
