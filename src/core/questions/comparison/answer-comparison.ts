import type { Finding } from "../../base/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { refused } from "../refused.ts";
import type { Sample } from "../sample-from-columns.ts";
import { sampleFromColumns } from "../sample-from-columns.ts";
import { sampleGroups } from "../sample-groups.ts";
import { compareGrades } from "./compare-grades.ts";
import { compareQuantity } from "./compare-quantity.ts";
import { comparisonByMethod } from "./comparison-by-method.ts";
import type { ComparisonInput } from "./comparison-input.ts";
import { comparisonMethods } from "./comparison-methods.ts";

const MOST_GROUPS = 60;

/** Groups of one record cannot be judged by a spread of their own: their records are set aside with that reason. */
function withoutSingles(input: ComparisonInput, sample: Sample): Sample {
  const { codes, counts } = sampleGroups(input.across, sample);
  const single = (i: number) => (counts[codes[i] ?? -1] ?? 0) < 2;
  return {
    rows: sample.rows.filter((_, i) => !single(i)),
    index: sample.index.filter((_, i) => !single(i)),
    setAside: [
      ...sample.setAside,
      ...sample.rows.filter((_, i) => single(i)).map((row) => ({ row, why: "group-of-one" })),
    ],
  };
}

/** The answer to `Y across G`: means of a quantity, or ranks of grades. Refuses no records, one group, and groups of one record only. */
export function answerComparison(input: ComparisonInput): Finding {
  const all = sampleFromColumns(input.table, [input.y, input.across], input.mask);
  if (all.rows.length === 0) return refused("no-records", { table: input.table.name });
  const before = sampleGroups(input.across, all);
  if (before.names.length < 2)
    return refused("one-group", { column: columnInWords(input.across), group: before.names[0] ?? "none" });
  if (before.names.length > MOST_GROUPS)
    return refused("out-of-domain", {
      name: columnInWords(input.across),
      needed: `a label with at most ${MOST_GROUPS} groups`,
    });
  const sample = withoutSingles(input, all);
  if (sampleGroups(input.across, sample).names.length < 2)
    return refused("too-few-records", { have: all.rows.length, need: 4 }, "at least two records in each of two groups");
  const named = comparisonMethods.get(input.by ?? "");
  if (named) return comparisonByMethod(input, sample, named);
  return input.y.kind === "grade" ? compareGrades(input, input.y, sample) : compareQuantity(input, input.y, sample);
}
