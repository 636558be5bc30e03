// Which rows of a table are readings of which piece.

/** `members`: rows of each piece, in the order in which pieces first appear; `leftOut`: pieces that take no part, and why. */
export type PieceMembers = {
  readonly members: readonly (readonly number[])[];
  readonly leftOut: ReadonlyMap<number, string>;
};

/** Rows by the text that names their piece; a row without one stays alone. */
function rowsOfPieces(texts: readonly (string | null)[]): readonly (readonly number[])[] {
  const members: number[][] = [];
  const places = new Map<string, number[]>();
  for (const [row, text] of texts.entries()) {
    const known = text === null ? undefined : places.get(text);
    if (known) known.push(row);
    else {
      const own = [row];
      members.push(own);
      if (text !== null) places.set(text, own);
    }
  }
  return members;
}

/**
 * The rows of each piece. texts: what names the piece of each row, null where nothing does. setAside: rows that the maker set aside, and why; they
 * are no readings of their piece. A piece without any other row keeps them, and is left out itself.
 */
export function pieceMembers(texts: readonly (string | null)[], setAside: ReadonlyMap<number, string>): PieceMembers {
  const leftOut = new Map<number, string>();
  const members = rowsOfPieces(texts).map((rows, piece) => {
    const own = rows.filter((row) => !setAside.has(row));
    if (own.length > 0) return own;
    leftOut.set(piece, setAside.get(rows[0] ?? -1) ?? "");
    return rows;
  });
  return { members, leftOut };
}
