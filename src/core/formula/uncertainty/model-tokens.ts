export type ModelToken = { readonly kind: "number" | "name" | "sign" | "end"; readonly text: string };

const TOKEN =
  /\s*(?:(\d+\.?\d*(?:[eE][+-]?\d+)?|\.\d+(?:[eE][+-]?\d+)?)|([A-Za-z_\u00b5\u0391-\u03ff][A-Za-z0-9_\u0391-\u03ff]*)|(\*\*|[-+*/^()−·×]))/y;
const SAME: Readonly<Record<string, string>> = { "**": "^", "−": "-", "·": "*", "×": "*" };

/** The numbers, names and signs of a formula, with an end; null and the rest of the text where a character belongs to none. */
export function modelTokens(text: string): { readonly tokens: readonly ModelToken[]; readonly rest: string | null } {
  const tokens: ModelToken[] = [];
  TOKEN.lastIndex = 0;
  let place = 0;
  for (let found = TOKEN.exec(text); found; found = TOKEN.exec(text)) {
    place = TOKEN.lastIndex;
    const [, number, name, sign] = found;
    if (number !== undefined) tokens.push({ kind: "number", text: number });
    else if (name !== undefined) tokens.push({ kind: "name", text: name });
    else tokens.push({ kind: "sign", text: SAME[sign ?? ""] ?? sign ?? "" });
  }
  tokens.push({ kind: "end", text: "" });
  const rest = text.slice(place).trim();
  return { tokens, rest: rest === "" ? null : rest };
}
