import type { Check, Estimate, Finding } from "../../base/index.ts";
import type { ColumnTable, LabelColumn, WordsColumn } from "../../columns/index.ts";
import { levelAmong, notAmong } from "../among-questions.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import { fisherProbabilities } from "../counts/fisher-probabilities.ts";
import { finding } from "../finding.ts";
import { wilsonInterval } from "../methods/proportion-interval.ts";
import { sources } from "../methods/sources.ts";
import { refused } from "../refused.ts";
import { sampleFromColumns } from "../sample-from-columns.ts";
import { sampleGroups } from "../sample-groups.ts";
import { sharedClusters } from "../shared-clusters.ts";
import { saysWord, wordFamilies } from "./word-families.ts";

/** `words of NOTES across G`; lexicon: family -> its words. */
export type WordsInput = {
  readonly table: ColumnTable;
  readonly notes: WordsColumn;
  readonly across: LabelColumn;
  readonly lexicon: ReadonlyMap<string, readonly string[]>;
  readonly mask: Uint8Array | null;
  readonly by: string | null;
  readonly asked: number;
};

/** The pair of groups whose shares differ most surely, for each family. */
type FamilyPair = {
  readonly family: string;
  readonly more: string;
  readonly less: string;
  readonly hits: readonly [number, number, number, number];
  readonly p: number;
};

/** How often each family of words is said in each group, with Wilson's interval; the surest difference by Fisher's exact test, shared out over all that were looked at. */
export function answerWords({ table, notes, across, lexicon, mask, asked }: WordsInput): Finding {
  const sample = sampleFromColumns(table, [notes, across], mask);
  if (sample.rows.length === 0) return refused("no-records", { table: table.name });
  const groups = sampleGroups(across, sample);
  if (groups.names.length < 2)
    return refused("one-group", { column: columnInWords(across), group: groups.names[0] ?? "none" });
  const texts = Array.from(sample.index, (row) => notes.texts[row] ?? "");
  const families = wordFamilies(lexicon, texts);
  if (families.size === 0) return refused("no-spread", { column: columnInWords(notes) });
  const estimate: Estimate[] = [];
  const pairs: FamilyPair[] = [];
  for (const [family, words] of families) {
    const said = texts.map((text) => saysWord(text, words));
    const hits = groups.names.map((_, g) => said.filter((yes, i) => yes && groups.codes[i] === g).length);
    for (const [g, name] of groups.names.entries()) {
      const share = wilsonInterval(hits[g] ?? 0, groups.counts[g] ?? 1, 0.95);
      estimate.push({
        name: `notes that say ${family} in ${name}`,
        value: share.estimate,
        low: share.low,
        high: share.high,
        level: 0.95,
        unit: "1",
      });
    }
    for (let a = 0; a < hits.length; a++)
      for (let b = a + 1; b < hits.length; b++) {
        const [ka, na, kb, nb] = [hits[a] ?? 0, groups.counts[a] ?? 1, hits[b] ?? 0, groups.counts[b] ?? 1];
        const p = fisherProbabilities(ka, na, kb, nb).twoSided;
        const [nameA, nameB] = [groups.names[a] ?? "", groups.names[b] ?? ""];
        pairs.push(
          ka / na >= kb / nb
            ? { family, more: nameA, less: nameB, hits: [ka, na, kb, nb], p }
            : { family, more: nameB, less: nameA, hits: [kb, nb, ka, na], p },
        );
      }
  }
  const lead = pairs.reduce((best, pair) => (pair.p < best.p ? pair : best));
  const p = Math.min(1, lead.p * pairs.length);
  const [ka, na, kb, nb] = lead.hits;
  const seen = `${lead.family} is said of ${ka} of ${na} in ${lead.more} and of ${kb} of ${nb} in ${lead.less}`;
  const check: Check = {
    id: "surest-difference",
    name: "surest difference, all pairs and families counted",
    value: p,
    limit: 0.05,
    passed: p < 0.05,
    sentence:
      p < 0.05
        ? "A difference as large as the surest would seldom come by chance among so many."
        : "A difference as large as the surest may well come by chance among so many.",
  };
  const isSure = p < 1 - levelAmong(asked);
  return finding({
    kind: "words",
    table,
    sentence: isSure
      ? `${seen.charAt(0).toUpperCase()}${seen.slice(1)}, ${sample.rows.length} notes.`
      : `Can't tell yet whether words of ${columnInWords(notes)} differ across ${columnInWords(across)}: the surest difference is that ${seen}, ${sample.rows.length} notes.${p < 0.05 ? ` ${notAmong(asked)}` : ""}`,
    estimate,
    rows: { used: sample.rows, setAside: sample.setAside },
    checks: [check],
    cautions: commonCautions(sample, asked, 10, sharedClusters(table, sample)),
    columns: [notes, across],
    chosenBecause:
      lexicon.size > 0
        ? "notes are counted by the families of the lexicon"
        : "no lexicon is given, so the most frequent words are counted",
    method: { id: "words-by-group", name: "Shares of notes by Wilson, differences by Fisher", source: sources.wilson },
  });
}
