import type { Finding } from "../../base/index.ts";
import type { ColumnTable, GradeColumn } from "../../columns/index.ts";
import { normalQuantile } from "../../numerics/index.ts";
import { numberInWords } from "../../units/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { kappa } from "../methods/kappa.ts";
import { refused } from "../refused.ts";
import { sampleFromColumns } from "../sample-from-columns.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { weightedKappa } from "./weighted-kappa.ts";

type GradesInput = {
  readonly table: ColumnTable;
  readonly a: GradeColumn;
  readonly b: GradeColumn;
  readonly mask: Uint8Array | null;
  readonly asked: number;
};

/** Two columns of grades of the same pieces: quadratic weighted kappa, 1 for full agreement and 0 for what chance would give. */
export function agreeGrades({ table, a, b, mask, asked }: GradesInput): Finding {
  const sample = sampleFromColumns(table, [a, b], mask);
  const n = sample.rows.length;
  if (n < 5)
    return n === 0 ? refused("no-records", { table: table.name }) : refused("too-few-records", { have: n, need: 5 });
  const levels = [...a.levels, ...b.levels.filter((level) => !a.levels.includes(level))];
  const place = (column: GradeColumn) =>
    Array.from(sample.index, (row) => levels.indexOf(column.levels[column.codes[row] ?? -1] ?? ""));
  const [first, second] = [place(a), place(b)];
  const { value, standardError } = weightedKappa(first, second, levels.length, 2);
  if (!Number.isFinite(value)) return refused("no-spread", { column: `${columnInWords(a)} and ${columnInWords(b)}` });
  const half = normalQuantile(0.975) * standardError;
  const agreed = {
    name: `agreement of ${columnInWords(a)} and ${columnInWords(b)} beyond chance`,
    value,
    low: value - half,
    high: Math.min(1, value + half),
    level: 0.95,
    unit: "1",
    standardError,
  };
  const same = first.filter((level, i) => level === second[i]).length;
  const sentence = `The ${columnInWords(a)} and the ${columnInWords(b)} give the same grade to ${same} of ${n} pieces; agreement beyond chance, near misses counted in part, is ${numberInWords(value, standardError)} of 1 (95 % interval ${intervalInWords(agreed)}).`;
  return finding({
    kind: "agreement",
    table,
    sentence,
    estimate: [agreed],
    rows: { used: sample.rows, setAside: sample.setAside },
    cautions: commonCautions(sample, asked, 20, sharedClusters(table, sample)),
    columns: [a, b],
    chosenBecause: "both columns are grades of the same pieces",
    method: kappa,
  });
}
