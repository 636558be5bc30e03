// Which rows of two tables belong together. Matching is arquero's.
import { table as arqueroTable } from "arquero";
import type { JoinKeys } from "./join-keys.ts";

export type MatchedRows = { readonly lefts: Int32Array; readonly rights: Int32Array };

/**
 * Row numbers of the pairs, in the left table's order, then the right's; right is -1 where nothing matches. A row without a key matches nothing.
 */
export function matchedRows({ left, right }: JoinKeys): MatchedRows {
  // Left rows without a key keep -1, which no row of the right has here.
  const rightRows = Int32Array.from(right.keys()).filter((row) => (right[row] as number) >= 0);
  const leftTable = arqueroTable({ key: left, left: Int32Array.from(left.keys()) });
  const rightTable = arqueroTable({ key: rightRows.map((row) => right[row] as number), right: rightRows });
  const pairs = leftTable.join_left(rightTable, "key") as unknown as {
    array: (name: string) => ArrayLike<number | undefined>;
  };
  return inOrder(pairs.array("left"), pairs.array("right"), right.length + 1);
}

/** Pairs by left row, then right row. width: more than any right row; one number a pair, so that sorting needs no comparison of our own. */
function inOrder(
  left: ArrayLike<number | undefined>,
  right: ArrayLike<number | undefined>,
  width: number,
): MatchedRows {
  const places = new Float64Array(left.length);
  for (let pair = 0; pair < places.length; pair++) places[pair] = (left[pair] ?? 0) * width + (right[pair] ?? -1) + 1;
  places.sort();
  const [lefts, rights] = [new Int32Array(places.length), new Int32Array(places.length)];
  for (let pair = 0; pair < places.length; pair++) {
    const place = places[pair] as number;
    const row = Math.floor(place / width);
    lefts[pair] = row;
    rights[pair] = place - row * width - 1;
  }
  return { lefts, rights };
}
