// Every sentence of the language, each with an example that is read by a test.
import type { EntryKindId } from "./entry-syntax.ts";

/** A form of sentence. `says`: what it asks or states; `example`: a body that can be written as it stands. */
export type SentenceForm = {
  readonly kind: EntryKindId;
  readonly form: string;
  readonly says: string;
  readonly example: string;
};

/** What each kind of entry is for. */
export const kindsInWords: { readonly [K in EntryKindId]: string } = {
  records: "Which table is meant, and how its records are named, joined and left out. One sentence a line.",
  columns: "Columns computed from others of the table that the entry is named after. One column a line.",
  value: "One amount, by a formula.",
  dial: "A value that the reader can turn.",
  question: "Something asked of columns.",
  rule: "A rule of thumb, with the date on which it was stated.",
  rig: "A question about the measuring equipment.",
  picture: "A picture of columns.",
  lexicon: "Words for tone that mean the same, one family a line.",
  use: "Names taken from another notebook.",
  setting: "A named position of dials, one dial a line.",
};

export const sentenceForms: readonly SentenceForm[] = [
  {
    kind: "records",
    form: 'from FILE [sheet "NAME"] [table N]',
    says: "the file the records lie in",
    example: "from records/tops.csv",
  },
  {
    kind: "records",
    form: "join FILE on COLUMN",
    says: "a second table, record by record",
    example: "from records/tops.csv\njoin records/instruments.csv on top_id",
  },
  { kind: "records", form: "piece is COLUMN", says: "how findings name a record", example: "piece is top_id" },
  {
    kind: "records",
    form: "pieces share COLUMN",
    says: "pieces that share this are not separate evidence",
    example: "pieces share tree",
  },
  {
    kind: "records",
    form: "finished on COLUMN",
    says: "the date that decides whether a rule was stated before",
    example: "finished on finished_on",
  },
  {
    kind: "records",
    form: "correct COLUMN by RIG",
    says: "the calibration found by a rig check is applied",
    example: "correct mass by balance",
  },
  {
    kind: "records",
    form: 'leave out piece PIECE because "…"',
    says: "a piece takes no part, and why",
    example: 'leave out piece B-07 because "split while drying"',
  },
  {
    kind: "columns",
    form: "NAME = FORMULA [in UNIT]",
    says: "a computed column",
    example: "density = mass / (length * width * thickness) in kg/m3",
  },
  { kind: "value", form: "FORMULA [in UNIT]", says: "an amount", example: "0.1 mm + 2 * blade_wear in mm" },
  {
    kind: "value",
    form: "AMOUNT ± AMOUNT, AMOUNT give or take AMOUNT",
    says: "an amount with its uncertainty",
    example: "2.4 mm give or take 0.1 mm",
  },
  {
    kind: "dial",
    form: "AMOUNT from AMOUNT to AMOUNT [step AMOUNT]",
    says: "where it stands and how far it turns",
    example: "9 N m from 5 N m to 15 N m",
  },
  {
    kind: "question",
    form: "Y against X [and X2 …]",
    says: "does Y go with X",
    example: "final_thickness against stiffness_along",
  },
  {
    kind: "question",
    form: "…, allowing for G",
    says: "a common slope within groups, or beside another quantity",
    example: "final_thickness against stiffness_along, allowing for species",
  },
  {
    kind: "question",
    form: "… within G",
    says: "each group separately",
    example: "final_thickness against stiffness_along within species",
  },
  {
    kind: "question",
    form: "… as a power law",
    says: "Y as a power of X",
    example: "final_thickness against stiffness_along, as a power law",
  },
  { kind: "question", form: "Y across G", says: "do the groups differ in Y", example: "density across species" },
  {
    kind: "question",
    form: "A beside B",
    says: "do two ways of measuring agree",
    example: "my_grade beside your_grade",
  },
  {
    kind: "question",
    form: "words of NOTES across G",
    says: "which words of tone belong to which group",
    example: "words of notes across species",
  },
  {
    kind: "question",
    form: 'NOTES word "…" against X',
    says: "is a word of tone said more often as X rises",
    example: 'notes word "bright" against stiffness_along',
  },
  {
    kind: "question",
    form: "expect Y when X is Q [and …] [for G]",
    says: "what the next instrument will show",
    example: "expect final_thickness when stiffness_along is 12 GPa for spruce",
  },
  {
    kind: "question",
    form: "rank TABLE by FORMULA",
    says: "the pieces in order, ties shown as ties",
    example: "rank backs by density",
  },
  {
    kind: "question",
    form: "… where CONDITION",
    says: "only some of the records",
    example: "density across species where thickness > 3 mm",
  },
  {
    kind: "question",
    form: "… by METHOD",
    says: "by a method of the catalogue",
    example: "density across species by welch",
  },
  {
    kind: "question",
    form: "… of TABLE",
    says: "in which table the columns are meant",
    example: "thickness across species of earlier",
  },
  {
    kind: "rule",
    form: "when X rises|falls, Y rises|falls",
    says: "two columns move together",
    example: "when stiffness_along rises, final_thickness falls\nwithin species\nstated 2024-05-02",
  },
  {
    kind: "rule",
    form: "when CONDITION, expect CONDITION [in at least N of M]",
    says: "what holds then",
    example: "when density < 335 kg/m3, expect sustain < 2.9 s\nin at least 9 of 10\nstated 2022-09-01",
  },
  {
    kind: "rule",
    form: "Y stays within Q of FORMULA",
    says: "Y never strays further",
    example: "final_thickness stays within 0.2 mm of 2.4 mm\nstated 2024-05-02",
  },
  {
    kind: "rule",
    form: "Y is FORMULA give or take Q",
    says: "Y lies around a value",
    example: "final_thickness is 2.4 mm give or take 0.2 mm\nstated 2024-05-02",
  },
  {
    kind: "rule",
    form: "G1 has more|less Y than G2 [by at least Q]",
    says: "one group exceeds another",
    example: "spruce has more density than cedar by at least 20 kg/m3\nstated 2021-06-01",
  },
  {
    kind: "rule",
    form: "X and Y are the same within Q",
    says: "two columns are equal for practical purposes",
    example: "width_left and width_right are the same within 0.5 mm\nstated 2021-06-01",
  },
  {
    kind: "rule",
    form: 'stated DATE, because "…"',
    says: "when it was stated, and why",
    example: 'when mass rises, sustain rises\nstated 2024-05-02\nbecause "heavy backs ring on"',
  },
  {
    kind: "rig",
    form: "READING against REFERENCE in FILE [where CONDITION]",
    says: "is what it shows what there is",
    example: 'reading against reference in records/rig-checks.csv where rig is "balance"',
  },
  {
    kind: "picture",
    form: "Y against X[, by G] [where CONDITION] [of TABLE]",
    says: "the records as points",
    example: "final_thickness against stiffness_along, by species",
  },
  {
    kind: "lexicon",
    form: "FAMILY: WORD, WORD, …",
    says: "words counted as one",
    example: "bright: bright, brilliant, chispa",
  },
  {
    kind: "use",
    form: "NAME[, NAME …] from NOTEBOOK",
    says: "columns and values of another notebook",
    example: "stiffness_along, density from wood-lab.md",
  },
  {
    kind: "setting",
    form: "DIAL AMOUNT",
    says: "where a dial stands in this setting",
    example: "target_stiffness 8 N m",
  },
];
