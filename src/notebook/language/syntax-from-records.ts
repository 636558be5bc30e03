// A line of a records entry as typed syntax.
import type { SyntaxNode } from "@lezer/common";
import type { RecordsLine } from "./entry-syntax.ts";
import { nameOf, numberOf, type SyntaxReading, spanOf, textOf, unquoted } from "./syntax-reading.ts";

/** The line, or null where a part is missing. top: the tree of one line. */
export function syntaxFromRecords(reading: SyntaxReading, top: SyntaxNode): RecordsLine | null {
  const node = top.firstChild;
  if (!node) return null;
  const span = spanOf(reading, node);
  const name = node.getChild("Name");
  const column = name && nameOf(reading, name);
  const quoted = (kind: string): string | null => {
    const found = node.getChild(kind);
    return found && unquoted(textOf(reading, found));
  };
  const file = quoted("File");
  switch (node.name) {
    case "FromLine": {
      const number = node.getChild("Number");
      return file === null
        ? null
        : { ...span, says: "from", file, sheet: quoted("Text"), table: number && numberOf(reading, number) };
    }
    case "JoinLine":
      return file === null || !column ? null : { ...span, says: "join", file, on: column };
    case "PieceLine":
      return column && { ...span, says: "piece-is", column };
    case "ShareLine":
      return column && { ...span, says: "pieces-share", column };
    case "FinishedLine":
      return column && { ...span, says: "finished-on", column };
    case "CorrectLine": {
      const rig = node.getChild("EntryName");
      return column && rig && { ...span, says: "correct", column, by: nameOf(reading, rig) };
    }
    case "LeaveOutLine": {
      const piece = quoted("Piece");
      const because = quoted("Text");
      return piece === null || because === null ? null : { ...span, says: "leave-out", piece, because };
    }
    default:
      return null;
  }
}
