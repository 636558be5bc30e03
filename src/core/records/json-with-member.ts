// One member of a JSON object set within its text: what is outside the value's range stays to the byte.

/** A member at the top of an object: where it begins, and where its value lies. */
type Member = { readonly key: string; readonly at: number; readonly from: number; readonly to: number };

const isSpace = (character: string | undefined) => character !== undefined && " \t\r\n".includes(character);

function afterSpace(text: string, at: number): number {
  while (isSpace(text[at])) at++;
  return at;
}

function afterString(text: string, at: number): number {
  for (at++; at < text.length && text[at] !== '"'; at++) if (text[at] === "\\") at++;
  return at + 1;
}

/** The end of the value that begins at `at`. Brackets are counted, so nothing nests too deeply for it. */
function afterValue(text: string, at: number): number {
  let open = 0;
  while (at < text.length) {
    const character = text[at] ?? "";
    if (open === 0 && ",}] \t\r\n".includes(character)) return at;
    if (character === '"') at = afterString(text, at);
    else {
      if (character === "{" || character === "[") open++;
      if (character === "}" || character === "]") open--;
      at++;
    }
    if (open === 0 && '"}]'.includes(character)) return at;
  }
  return at;
}

function membersOf(text: string, brace: number): readonly Member[] {
  const found: Member[] = [];
  for (let at = afterSpace(text, brace + 1); text[at] === '"'; ) {
    const keyEnd = afterString(text, at);
    const from = afterSpace(text, afterSpace(text, keyEnd) + 1);
    const to = afterValue(text, from);
    found.push({ key: JSON.parse(text.slice(at, keyEnd)) as string, at, from, to });
    const next = afterSpace(text, to);
    at = text[next] === "," ? afterSpace(text, next + 1) : text.length;
  }
  return found;
}

/** The value as it is written in this file: over several lines, indented as the members are, where they stand on lines of their own. */
function printed(value: unknown, gap: string): string {
  const line = Math.max(gap.lastIndexOf("\n"), gap.lastIndexOf("\r"));
  if (line < 0) return JSON.stringify(value);
  const indent = gap.slice(line + 1);
  return JSON.stringify(value, null, indent || "  ").replaceAll(
    "\n",
    `${gap.includes("\r\n") ? "\r\n" : "\n"}${indent}`,
  );
}

/**
 * The text with the member `key` of its object set to `value`: in place where it stands (the last one counts, as in JSON), else after
 * the others. text: valid JSON, an object, with or without a byte order mark. A member that has the value already is left as it is written.
 */
export function jsonWithMember(text: string, key: string, value: unknown): string {
  const brace = text.indexOf("{");
  const members = membersOf(text, brace);
  const [first, last] = [members[0], members.at(-1)];
  const known = members.findLast((member) => member.key === key);
  const gap = first === undefined ? "" : text.slice(brace + 1, first.at);
  if (known !== undefined) {
    const same = JSON.stringify(JSON.parse(text.slice(known.from, known.to))) === JSON.stringify(value);
    return same ? text : text.slice(0, known.from) + printed(value, gap) + text.slice(known.to);
  }
  const member = `${JSON.stringify(key)}: ${printed(value, gap)}`;
  if (last === undefined) return `${text.slice(0, brace + 1)} ${member} ${text.slice(afterSpace(text, brace + 1))}`;
  return `${text.slice(0, last.to)},${gap || " "}${member}${text.slice(last.to)}`;
}
