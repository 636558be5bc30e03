// One written measurement by itself, without a column that would settle its decimal mark or its unit.
import { declined, type Outcome, succeeded } from "../../base/index.ts";
import { unitFromText } from "../../units/index.ts";
import { amountOf } from "./amount-of.ts";
import type { DecimalMark } from "./atom.ts";
import { type DraftOrCode, draftVote, type QuantityDraft, quantityDraft } from "./quantity-draft.ts";
import { readAtom, withPlainDigits } from "./read-atom.ts";

/** What a text says. `unit`: its canonical code, null where the text has none. `codes`: what to know of the reading, as for a cell. */
export type Measurement = {
  readonly value: number;
  readonly unit: string | null;
  readonly uncertainty?: number;
  readonly codes: readonly string[];
};

const LONGEST = 120;
const shortened = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

/** A number with a unit that columns of records have not, such as "1.6 Mpsi" or "12 %MC"; or the text of a unit that is none. */
function withFurtherUnit(cell: string): QuantityDraft | { readonly unknown: string } | null {
  const text = withPlainDigits(cell);
  const first = readAtom(text, 0);
  const rest = first ? text.slice(first.end).trim() : "";
  if (!first || rest === "" || !/^[\p{L}°%(µ"'′″]/u.test(rest)) return null;
  const unit = unitFromText(rest);
  return unit
    ? { form: "plain", first: first.atom, second: null, digits: "", unit: unit.code, percent: false, marks: [] }
    : { unknown: rest };
}

const inWords = (draft: QuantityDraft, mark: DecimalMark) => {
  const amount = amountOf(draft, mark, draft.unit === "%");
  return amount === null ? null : amount.value;
};

/** The decimal mark of a draft: by its own vote, by `decimal`; a lone point before three digits is a decimal one, and says so. */
function markOf(draft: QuantityDraft, text: string, decimal: DecimalMark | undefined): DecimalMark | "ask" {
  const vote = draftVote(draft);
  if (vote === null) return decimal ?? ".";
  if (vote === "." || vote === ",") return vote;
  if (vote === "mixed") return "ask";
  return decimal ?? (text.includes(",") ? "ask" : ".");
}

/**
 * Reads one measurement as a bench book has it: `19 11/16 in`, `7½ in`, `1' 9 5/8"`, `6 lb 3 oz`, `3,4 mm`, `1.6e6 psi`, `2.31 ± 0.02 mm`.
 * name: of the field that it stands in, for the refusal; decimal: which mark is the decimal one, where it is known.
 * Declines what is no number, an unknown unit, and a comma before three digits ("1,250 g"), which may be either; a point there is taken as the
 * decimal one with the code `point-may-group`. Source: the rules by which a cell is read.
 * @example measurementFromText("6 lb 3 oz", "text") -> { value: 99, unit: "[oz_av]", codes: [] }
 */
export function measurementFromText(written: string, name: string, decimal?: DecimalMark): Outcome<Measurement> {
  const cell = written.trim();
  const unreadable = declined("amount-unreadable", { name, text: shortened(cell) });
  if (cell === "" || cell.length > LONGEST) return unreadable;
  let draft: DraftOrCode = quantityDraft(cell, null);
  if (draft.form === "none" && ["unknown-unit", "unreadable-number"].includes(draft.code)) {
    const further = withFurtherUnit(cell);
    if (further && "unknown" in further)
      return declined("unit-unknown", { name: `${name} ("${shortened(cell)}")`, unit: shortened(further.unknown) });
    if (further) draft = further;
  }
  if (draft.form === "none") return unreadable;
  const mark = markOf(draft, cell, decimal);
  if (mark === "ask") {
    const [point, comma] = [inWords(draft, "."), inWords(draft, ",")];
    return point === null || comma === null
      ? unreadable
      : declined("amount-ambiguous", { name, text: shortened(cell), one: String(point), other: String(comma) });
  }
  const amount = amountOf(draft, mark, draft.unit === "%");
  if (amount === null || !Number.isFinite(amount.value)) return unreadable;
  const isEither = draftVote(draft) === "either" && decimal === undefined;
  const codes = [
    ...draft.marks,
    ...(draft.form === "range" ? ["range"] : []),
    ...(isEither ? ["point-may-group"] : []),
  ];
  return succeeded({ ...amount, unit: draft.unit, codes });
}
