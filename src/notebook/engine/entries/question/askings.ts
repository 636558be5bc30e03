// How each sort of question is asked. A new sort does not compile until it stands here.
import type { Outcome } from "../../../../core/base/index.ts";
import type { Column, QuantityColumn, WordsColumn } from "../../../../core/columns/index.ts";
import type { PictureColumns } from "../../../../core/pictures/index.ts";
import {
  answerAgreement,
  answerComparison,
  answerPrediction,
  answerRanking,
  answerRelation,
  answerWord,
  answerWords,
  refused,
} from "../../../../core/questions/index.ts";
import type { QuestionSyntax } from "../../../language/index.ts";
import { amountFrom } from "../../evaluated.ts";
import { labelOf, neededLabel } from "../../label-of.ts";
import { quantityOf, quantityOrGrade } from "../../quantity-of.ts";
import type { AskedAnswer, Asking, AskingContext } from "./asking.ts";

/** The refusal of a column of the wrong kind, as the answer. */
const declinedBy = (outcome: Outcome<unknown>, column: Column, table: PictureColumns["table"]): AskedAnswer => ({
  finding: outcome.ok
    ? refused("not-finite", { name: column.name })
    : refused(outcome.refusal.code, outcome.refusal.facts as never),
  columns: [column],
  drawn: { table, y: column },
});

/** Columns each turned into what is needed, or the first that cannot be. */
function all<T>(
  columns: readonly Column[],
  turn: (column: Column) => Outcome<T>,
):
  | { readonly ok: true; readonly values: readonly T[] }
  | { readonly ok: false; readonly column: Column; readonly outcome: Outcome<T> } {
  const values: T[] = [];
  for (const column of columns) {
    const outcome = turn(column);
    if (!outcome.ok) return { ok: false, column, outcome };
    values.push(outcome.value);
  }
  return { ok: true, values };
}

const present = (columns: readonly (Column | null)[]): readonly Column[] | null =>
  columns.includes(null) ? null : columns.filter((column) => column !== null);
const common = ({ table, mask, by, asked }: AskingContext) => ({ table, mask, by, asked });

const relation: Asking<"relation"> = (question, context) => {
  const named = present([question.y, ...question.x].map(context.columnOf));
  const allowingFor = present(question.allowingFor.map(context.columnOf));
  const withinNamed = question.within ? context.columnOf(question.within) : null;
  if (!named || !allowingFor || (question.within && !withinNamed)) return null;
  const quantities = all<QuantityColumn>(named, quantityOf);
  if (!quantities.ok) return declinedBy(quantities.outcome, quantities.column, context.table);
  const within = withinNamed ? neededLabel(withinNamed) : null;
  if (within && !within.ok && withinNamed) return declinedBy(within, withinNamed, context.table);
  const [y, ...x] = quantities.values;
  if (!y) return null;
  const label = within?.ok ? within.value : null;
  const turned = allowingFor.map((column) => (column.kind === "quantity" ? column : (labelOf(column) ?? column)));
  const finding = answerRelation({
    ...common(context),
    y,
    x,
    allowingFor: turned,
    within: label,
    powerLaw: question.powerLaw,
  });
  const group = label ?? turned.map(labelOf).find((each) => each !== null) ?? null;
  return {
    finding,
    columns: [...named, ...allowingFor, ...(withinNamed ? [withinNamed] : [])],
    drawn: { table: context.table, y, x: x[0] ?? null, group, powerLaw: question.powerLaw },
  };
};

const comparison: Asking<"comparison"> = (question, context) => {
  const [y, across] = [context.columnOf(question.y), context.columnOf(question.across)];
  if (!y || !across) return null;
  const [measured, label] = [quantityOrGrade(y), neededLabel(across)];
  if (!measured.ok) return declinedBy(measured, y, context.table);
  if (!label.ok) return declinedBy(label, across, context.table);
  const finding = answerComparison({ ...common(context), y: measured.value, across: label.value });
  return { finding, columns: [y, across], drawn: { table: context.table, y: measured.value, group: label.value } };
};

const agreement: Asking<"agreement"> = (question, context) => {
  const [a, b] = [context.columnOf(question.a), context.columnOf(question.b)];
  if (!a || !b) return null;
  const [first, second] = [quantityOrGrade(a), quantityOrGrade(b)];
  if (!first.ok) return declinedBy(first, a, context.table);
  if (!second.ok) return declinedBy(second, b, context.table);
  const finding = answerAgreement({ ...common(context), a: first.value, b: second.value });
  return { finding, columns: [a, b], drawn: { table: context.table, y: first.value, x: second.value } };
};

const notesOf = (column: Column): Outcome<WordsColumn> | WordsColumn => {
  if (column.kind === "words") return column;
  const label = labelOf(column);
  const { name, header, origin, warnings } = column;
  return label
    ? {
        kind: "words",
        name,
        header,
        origin,
        warnings,
        texts: Array.from(label.codes, (code) => label.names[code] ?? null),
      }
    : (neededLabel(column) as Outcome<WordsColumn>);
};

const words: Asking<"words"> = (question, context) => {
  const [notes, across] = [context.columnOf(question.notes), context.columnOf(question.across)];
  if (!notes || !across) return null;
  const [texts, label] = [notesOf(notes), neededLabel(across)];
  if ("ok" in texts) return declinedBy(texts, notes, context.table);
  if (!label.ok) return declinedBy(label, across, context.table);
  const finding = answerWords({ ...common(context), notes: texts, across: label.value, lexicon: context.lexicon });
  return { finding, columns: [notes, across], drawn: { table: context.table, y: notes, group: label.value } };
};

const word: Asking<"word"> = (question, context) => {
  const [notes, x] = [context.columnOf(question.notes), context.columnOf(question.x)];
  if (!notes || !x) return null;
  const [texts, quantity] = [notesOf(notes), quantityOf(x)];
  if ("ok" in texts) return declinedBy(texts, notes, context.table);
  if (!quantity.ok) return declinedBy(quantity, x, context.table);
  const finding = answerWord({
    ...common(context),
    notes: texts,
    word: question.word,
    x: quantity.value,
    lexicon: context.lexicon,
  });
  return { finding, columns: [notes, x], drawn: { table: context.table, y: notes, x: quantity.value } };
};

const prediction: Asking<"prediction"> = (question, context) => {
  const y = context.columnOf(question.y);
  const x = present(question.when.map((each) => context.columnOf(each.x)));
  if (!y || !x) return null;
  const quantities = all<QuantityColumn>([y, ...x], quantityOf);
  if (!quantities.ok) return declinedBy(quantities.outcome, quantities.column, context.table);
  const [measured, ...columns] = quantities.values;
  if (!measured) return null;
  const when = columns.flatMap((column, i) => {
    const at = question.when[i];
    const amount = at ? amountFrom(at.is, context.reach.amounts) : null;
    return amount?.ok && amount.value.value !== null ? [{ x: column, is: amount.value.value }] : [];
  });
  if (when.length < columns.length)
    return {
      finding: refused("not-finite", { name: measured.name }),
      columns: [y, ...x],
      drawn: { table: context.table, y: measured },
    };
  const finding = answerPrediction({ ...common(context), y: measured, when, group: question.group });
  return { finding, columns: [y, ...x], drawn: { table: context.table, y: measured, x: columns[0] ?? null } };
};

const ranking: Asking<"ranking"> = (question, context) => {
  const y = context.columnOf(question.expression);
  if (!y) return null;
  const quantity = quantityOf(y);
  if (!quantity.ok) return declinedBy(quantity, y, context.table);
  return {
    finding: answerRanking({ ...common(context), y: quantity.value }),
    columns: [y],
    drawn: { table: context.table, y: quantity.value },
  };
};

export const askings: { readonly [A in QuestionSyntax["asks"]]: Asking<A> } = {
  relation,
  comparison,
  agreement,
  words,
  word,
  prediction,
  ranking,
};
