// What changed between two dated copies: in the words of the notebook, the records and the answers.
import { differenceBetween } from "./difference-between.ts";
import { cellsFromEmbedded, type EmbeddedCells, severalFromEmbedded } from "./embedded-cells.ts";
import type { EmbeddedCopy, EmbeddedTable } from "./embedded-copy.ts";

export type CopyChange = {
  readonly entry: string;
  readonly what: string;
  readonly before: string;
  readonly after: string;
};
export type Comparison = { readonly same: boolean; readonly changes: readonly CopyChange[] };

const EXACT = { relative: 0, texts: true } as const;
const MOST = 1000;

const named = <T extends { readonly name: string }>(list: readonly T[]) => new Map(list.map((one) => [one.name, one]));

/** Entries by kind and name: a records entry and the columns entry of its table share a name. */
const called = (list: EmbeddedCopy["result"]["entries"]) =>
  new Map(list.map((one) => [`${one.kind} ${one.name}`, one]));

/** What of an entry is its answer and not how it is shown. */
function entryChanges(before: EmbeddedCopy, after: EmbeddedCopy): readonly CopyChange[] {
  const [old, now] = [called(before.result.entries), called(after.result.entries)];
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((key) => {
    const [a, b] = [old.get(key), now.get(key)];
    const name = (a ?? b)?.name ?? key;
    if (!a || !b)
      return [{ entry: name, what: "entry", before: a ? a.asked : "absent", after: b ? b.asked : "absent" }];
    const plain = (entry: typeof a) => ({
      asked: entry.asked,
      value: entry.value,
      problems: entry.problems.map((problem) => problem.sentence),
      ...(entry.finding === undefined
        ? {}
        : entry.finding.kind === "refused"
          ? { sentence: entry.finding.sentence }
          : {
              sentence: entry.finding.sentence,
              estimate: entry.finding.estimate,
              cautions: entry.finding.cautions.map((caution) => caution.code),
              used: entry.finding.rows.used.length,
              method: entry.finding.method.id,
            }),
    });
    return differenceBetween(plain(a), plain(b), EXACT).map((difference) => ({
      entry: name,
      what: difference.at,
      before: difference.before,
      after: difference.after,
    }));
  });
}

/** The raw text of each row; of several readings one after the other. */
function rawTexts(cells: EmbeddedCells): readonly (string | null)[] {
  const several = severalFromEmbedded(cells);
  return cellsFromEmbedded(cells).map(
    (cell, index) =>
      several
        .get(index)
        ?.map(({ raw }) => raw)
        .join("; ") ??
      cell?.raw ??
      null,
  );
}

function byPiece(table: EmbeddedTable) {
  const columns = table.cells.map((each) => [each.column, rawTexts(each)] as const);
  return new Map(
    table.rows.map((row, index) => [
      row.piece,
      Object.fromEntries(columns.map(([name, texts]) => [name, texts[index] ?? null])),
    ]),
  );
}

function recordChanges(before: EmbeddedCopy, after: EmbeddedCopy): readonly CopyChange[] {
  const [old, now] = [named(before.tables), named(after.tables)];
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((name) => {
    const [a, b] = [old.get(name), now.get(name)];
    if (!a || !b)
      return [{ entry: name, what: "record table", before: a ? "present" : "absent", after: b ? "present" : "absent" }];
    const [rows, rowsNow] = [byPiece(a), byPiece(b)];
    return [...new Set([...rows.keys(), ...rowsNow.keys()])].flatMap((piece) => {
      const [x, y] = [rows.get(piece), rowsNow.get(piece)];
      if (!x || !y)
        return [
          { entry: name, what: `record ${piece}`, before: x ? "present" : "absent", after: y ? "present" : "absent" },
        ];
      return differenceBetween(x, y, EXACT).map((difference) => ({
        entry: name,
        what: `${difference.at} of ${piece}`,
        before: difference.before,
        after: difference.after,
      }));
    });
  });
}

/** Changes of records, entries and answers, at most a thousand. */
export function compareCopies(before: EmbeddedCopy, after: EmbeddedCopy): Comparison {
  const head = differenceBetween(
    { date: before.date, version: before.version, title: before.result.title, dials: before.dials },
    { date: after.date, version: after.version, title: after.result.title, dials: after.dials },
    EXACT,
  ).map((difference) => ({ entry: "copy", what: difference.at, before: difference.before, after: difference.after }));
  const changes = [...head, ...recordChanges(before, after), ...entryChanges(before, after)].slice(0, MOST);
  return { same: changes.length === 0, changes };
}
