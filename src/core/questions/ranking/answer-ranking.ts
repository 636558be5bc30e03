import type { Estimate, Finding } from "../../base/index.ts";
import type { ColumnTable, QuantityColumn } from "../../columns/index.ts";
import { normalQuantile } from "../../numerics/index.ts";
import { amountInWords } from "../../units/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { refused } from "../refused.ts";
import { sampleFromColumns } from "../sample-from-columns.ts";
import { shownEstimate } from "../shown-estimate.ts";

/** `rank TABLE by EXPR`, resolved to a column. */
export type RankingInput = {
  readonly table: ColumnTable;
  readonly y: QuantityColumn;
  readonly mask: Uint8Array | null;
  readonly by: string | null;
  readonly asked: number;
};

const MOST = 200;
const SAID = 5;

/** Whether two values differ by less than chance reading errors would make them: |a - b| <= 1.96 sqrt(ua^2 + ub^2); equal values tie in any case. */
const ties = (a: Estimate, b: Estimate): boolean =>
  Math.abs(a.value - b.value) <= normalQuantile(0.975) * Math.hypot(a.standardError ?? 0, b.standardError ?? 0);

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** Pieces from the largest value down, with their uncertainty; who ties with the first is said as a tie. The first 200 have estimates. */
export function answerRanking({ table, y, mask, asked }: RankingInput): Finding {
  const sample = sampleFromColumns(table, [y], mask);
  if (sample.rows.length === 0) return refused("no-records", { table: table.name });
  const z = normalQuantile(0.975);
  const order = Array.from(sample.index, (row, at) => ({ row, at })).sort(
    (a, b) => (y.values[b.row] ?? 0) - (y.values[a.row] ?? 0) || a.row - b.row,
  );
  const estimate = order.slice(0, MOST).map(({ row, at }) => {
    const value = y.values[row] ?? Number.NaN;
    const u = y.uncertainty?.[row] ?? Number.NaN;
    const known = Number.isFinite(u) && u > 0;
    return shownEstimate(
      {
        name: sample.rows[at]?.piece ?? "",
        value,
        low: known ? value - z * u : value,
        high: known ? value + z * u : value,
        ...(known ? { standardError: u } : {}),
      },
      y.unit,
      "level",
    );
  });
  const first = estimate[0];
  if (!first) return refused("no-records", { table: table.name });
  const tied = estimate.filter((one) => ties(first, one));
  const said = (one: Estimate) => `${one.name} (${amountInWords(one.value, one.standardError ?? null, one.unit)})`;
  const head =
    tied.length === 1
      ? `${said(first)} has the highest ${columnInWords(y)}`
      : `${listed(tied.slice(0, SAID).map(said))}${tied.length > SAID ? ` and ${tied.length - SAID} more` : ""} share the highest ${columnInWords(y)}: their uncertainty does not tell them apart`;
  const rest = estimate.slice(tied.length, tied.length + SAID);
  const sentence = `${head}${rest.length > 0 ? `; then ${listed(rest.map(said))}` : ""}. ${sample.rows.length} ${sample.rows.length === 1 ? "piece" : "pieces"} ranked.`;
  return finding({
    kind: "ranking",
    table,
    sentence,
    estimate,
    rows: {
      used: order.map(({ at }) => sample.rows[at]).filter((row) => row !== undefined),
      setAside: sample.setAside,
    },
    columns: [y],
    cautions: commonCautions(sample, asked, 0, null),
    chosenBecause: y.uncertainty
      ? "values whose uncertainties overlap are ties"
      : "no uncertainty is known, so only equal values are ties",
    method: {
      id: "ranking",
      name: "Order by value, ties by uncertainty",
      source: {
        citation: "JCGM 100:2008, section 5.1 (uncertainty of a difference of independent readings)",
        basis: "published",
      },
    },
  });
}
