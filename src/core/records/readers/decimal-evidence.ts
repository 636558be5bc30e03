// Which decimal mark a column has: by the cells that can be read one way only, else by its neighbours.
import type { DecimalMark } from "./atom.ts";
import type { ColumnSource } from "./column-source.ts";
import { draftVote } from "./quantity-draft.ts";

type Votes = { readonly point: boolean; readonly comma: boolean; readonly waiting: boolean };

function votesOf(source: ColumnSource): Votes {
  const { point: points, comma: commas, waiting: waits } = source.numerals;
  let [point, comma, waiting] = [points > 0, commas > 0, waits > 0];
  for (const { special, formula, draft } of source.cells) {
    if (special !== null || formula || draft === null || draft.form === "none") continue;
    const vote = draftVote(draft);
    if (vote === ".") point = true;
    else if (vote === ",") comma = true;
    else if (vote === "either") waiting = true;
  }
  return { point, comma, waiting };
}

const decision = ({ point, comma }: Votes): DecimalMark | null => (point === comma ? null : point ? "." : ",");

/** The decided mark (null: each cell by its own vote, the others ask) and the column's warnings. */
export function decimalEvidence(
  source: ColumnSource,
  neighbours: readonly ColumnSource[],
): { decided: DecimalMark | null; warnings: string[] } {
  if (source.options.decimal !== undefined) return { decided: source.options.decimal, warnings: [] };
  const votes = votesOf(source);
  if (votes.point && votes.comma) return { decided: null, warnings: ["mixed-decimal-marks"] };
  const own = decision(votes);
  if (own !== null || !votes.waiting) return { decided: own, warnings: [] };
  const others = neighbours
    .filter((other) => other !== source)
    .map(votesOf)
    .filter(({ point, comma }) => point || comma);
  const found = new Set(others.map(decision));
  const [only = null] = found;
  return found.size === 1 && only !== null
    ? { decided: only, warnings: ["decimal-from-other-columns"] }
    : { decided: null, warnings: [] };
}
