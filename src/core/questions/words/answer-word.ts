import type { Finding } from "../../base/index.ts";
import type { ColumnTable, QuantityColumn, WordsColumn } from "../../columns/index.ts";
import { tQuantile } from "../../numerics/index.ts";
import { numberInWords, unitForDisplay } from "../../units/index.ts";
import { directionAmong } from "../among-questions.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { finding } from "../finding.ts";
import { groupMoments } from "../groups/group-moments.ts";
import { welchDifference } from "../groups/welch-difference.ts";
import { intervalInWords } from "../interval-in-words.ts";
import { welchT } from "../methods/welch-t.ts";
import { moreInWords } from "../more-in-words.ts";
import { refused } from "../refused.ts";
import { sampled, sampleFromColumns } from "../sample-from-columns.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { shownEstimate } from "../shown-estimate.ts";
import { saysWord } from "./word-families.ts";

/** `NOTES word "bright" against X`; a word that heads a family of the lexicon, or is in one, stands for the family. */
export type WordInput = {
  readonly table: ColumnTable;
  readonly notes: WordsColumn;
  readonly word: string;
  readonly x: QuantityColumn;
  readonly lexicon: ReadonlyMap<string, readonly string[]>;
  readonly mask: Uint8Array | null;
  readonly by: string | null;
  readonly asked: number;
};

/** Do pieces whose notes say a word have more or less of X than the others? Welch's difference of the two means. */
export function answerWord({ table, notes, word, x, lexicon, mask, asked }: WordInput): Finding {
  const sample = sampleFromColumns(table, [notes, x], mask);
  if (sample.rows.length === 0) return refused("no-records", { table: table.name });
  const words = [...(lexicon.get(word) ?? [...lexicon.values()].find((family) => family.includes(word)) ?? []), word];
  const codes = Int32Array.from(sample.index, (row) => (saysWord(notes.texts[row] ?? "", words) ? 1 : 0));
  const count = codes.reduce((sum, code) => sum + code, 0);
  const fewest = Math.min(count, codes.length - count);
  if (fewest === 0)
    return refused("one-group", {
      column: columnInWords(notes),
      group: count === 0 ? `none says ${word}` : `all say ${word}`,
    });
  if (fewest < 2) return refused("too-few-records", { have: fewest, need: 2 });
  const { difference, standardError, degreesOfFreedom } = welchDifference(
    groupMoments(sampled(x.values, sample), codes, 2),
    1,
    0,
  );
  if (!(standardError > 0)) return refused("no-spread", { column: columnInWords(x) });
  const half = standardError * tQuantile(0.975, degreesOfFreedom);
  const estimate = shownEstimate(
    {
      name: `difference of ${columnInWords(x)}, notes that say ${word} less the others`,
      value: difference,
      low: difference - half,
      high: difference + half,
      standardError,
      degreesOfFreedom,
    },
    x.unit,
    "difference",
  );
  const unit = unitForDisplay(x.unit) === "" ? "" : ` ${unitForDisplay(x.unit)}`;
  const interval = `95 % interval ${intervalInWords(estimate)}`;
  const sentence =
    directionAmong(estimate, asked) === 0
      ? `Can't tell yet whether pieces whose notes say ${word} (${count} of ${codes.length}) have another ${columnInWords(x)} than the others (${interval}). ${moreInWords(difference / standardError, codes.length, 2, asked)}.`
      : `Pieces whose notes say ${word} (${count} of ${codes.length}) have ${numberInWords(Math.abs(estimate.value), estimate.standardError ?? null)}${unit} ${difference > 0 ? "more" : "less"} ${columnInWords(x)} than the others (${interval}).`;
  return finding({
    kind: "words",
    table,
    sentence,
    estimate: [estimate],
    rows: { used: sample.rows, setAside: sample.setAside },
    cautions: commonCautions(sample, asked, 10, sharedClusters(table, sample)),
    columns: [notes, x],
    method: welchT,
    claims: [estimate],
    asked,
    chosenBecause: "the notes make two groups, each with its own spread",
  });
}
