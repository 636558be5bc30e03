import type { Caution, Finding } from "../../base/index.ts";
import type { ColumnTable, LabelColumn, QuantityColumn } from "../../columns/index.ts";
import { tQuantile } from "../../numerics/index.ts";
import { amountInWords, fromSi, numberInWords, unitForDisplay, unitFromCode } from "../../units/index.ts";
import { capitalized } from "../capitalized.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { fitAt, linearFit, ones } from "../fits/linear-fit.ts";
import { indicatorColumns } from "../inputs/group-columns.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { ordinaryLeastSquares } from "../methods/ordinary-least-squares.ts";
import { refused } from "../refused.ts";
import { sampled, sampleFromColumns } from "../sample-from-columns.ts";
import { sampleGroups } from "../sample-groups.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { shownEstimate } from "../shown-estimate.ts";

/** `expect Y when X is Q [and …] [for G]`; `is` in SI; `group` is a name of one of the table's labels. */
export type PredictionInput = {
  readonly table: ColumnTable;
  readonly y: QuantityColumn;
  readonly when: readonly { readonly x: QuantityColumn; readonly is: number }[];
  readonly group: string | null;
  readonly mask: Uint8Array | null;
  readonly by: string | null;
  readonly asked: number;
};

const labelOf = (table: ColumnTable, group: string): LabelColumn | undefined =>
  [...table.columns.values()].find(
    (column): column is LabelColumn => column.kind === "label" && column.names.includes(group),
  );

const shownAmount = (value: number, column: QuantityColumn): string =>
  amountInWords(fromSi(value, unitFromCode(column.unit)), null, column.unit);

/** What to expect of the next instrument: an interval that holds it 95 times in 100, with one slope common to all groups. Far beyond the records it refuses. */
export function answerPrediction(input: PredictionInput): Finding {
  const { table, y, when, group } = input;
  const label = group === null ? null : labelOf(table, group);
  if (label === undefined)
    return refused("out-of-domain", { name: group ?? "the group", needed: `a group that occurs in ${table.name}` });
  const columns = when.map(({ x }) => x);
  const sample = sampleFromColumns(table, [y, ...columns, ...(label ? [label] : [])], input.mask);
  const n = sample.rows.length;
  if (n === 0) return refused("no-records", { table: table.name });
  const groups = label ? sampleGroups(label, sample) : null;
  const own = groups && group !== null ? groups.names.indexOf(group) : -1;
  if (groups && own < 0) return refused("no-records", { table: `${table.name} for ${group}` });
  const constants = groups ? indicatorColumns(groups.codes, groups.names.length) : [ones(n)];
  const x = columns.map((column) => sampled(column.values, sample));
  const need = Math.max(4, constants.length + x.length + 2);
  if (n < need) return refused("too-few-records", { have: n, need });
  const cautions: Caution[] = [...commonCautions(sample, input.asked, 10, sharedClusters(table, sample))];
  for (const [at, { x: column, is }] of when.entries()) {
    const values = (x[at] ?? new Float64Array()).filter((_, i) => own < 0 || groups?.codes[i] === own);
    const [low, high] = [
      values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
      values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
    ];
    if (is >= low && is <= high) continue;
    const facts = { column: columnInWords(column), low: shownAmount(low, column), high: shownAmount(high, column) };
    const beyond = Math.max(low - is, is - high);
    if (beyond > high - low)
      return refused("out-of-domain", {
        name: `${facts.column} of ${shownAmount(is, column)}`,
        needed: `a value near the records, which run from ${facts.low} to ${facts.high}`,
      });
    cautions.push({ code: "beyond-records", facts });
  }
  const values = sampled(y.values, sample);
  const fit = linearFit([...constants, ...x], values);
  if (fit.rank < constants.length + x.length)
    return refused("no-spread", { column: columns.map(columnInWords).join(" and ") || columnInWords(y) });
  if (!(fit.sigma > 0)) return refused("perfect-fit", { column: columnInWords(y) });
  const at = fitAt(fit, [...constants.map((_, g) => (groups ? (g === own ? 1 : 0) : 1)), ...when.map(({ is }) => is)]);
  const multiple = tQuantile(0.975, fit.degreesOfFreedom);
  const place = (name: string, low: number, high: number) =>
    shownEstimate(
      {
        name,
        value: at.fit,
        low,
        high,
        standardError: (high - low) / 2 / multiple,
        degreesOfFreedom: fit.degreesOfFreedom,
      },
      y.unit,
      "level",
    );
  const next = place(`${columnInWords(y)} of the next instrument`, at.nextLow, at.nextHigh);
  const mean = place(`mean ${columnInWords(y)} of such instruments`, at.meanLow, at.meanHigh);
  const unit = unitForDisplay(y.unit) === "" ? "" : ` ${unitForDisplay(y.unit)}`;
  const told = when.map(({ x: column, is }) => `${columnInWords(column)} of ${shownAmount(is, column)}`).join(" and ");
  const sentence =
    `${capitalized(`expect a ${columnInWords(y)} of about ${numberInWords(next.value, next.standardError ?? null)}${unit}`)} for a next instrument with ${told}${group === null ? "" : `, ${group}`}: 95 in 100 such would lie between ${intervalInWords(next)}, from ${n} records.`.replace(
      "between",
      "within",
    );
  return finding({
    kind: "prediction",
    table,
    sentence,
    estimate: [next, mean],
    rows: { used: sample.rows, setAside: sample.setAside },
    cautions,
    method: ordinaryLeastSquares,
    chosenBecause: groups
      ? "one slope common to all groups, with a level for each"
      : "a straight line through all records",
    columns: [y, ...columns, ...(label ? [label] : [])],
  });
}
