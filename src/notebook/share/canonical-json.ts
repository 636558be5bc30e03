// JSON in one spelling only, so that equal content has equal bytes and one digest.

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/**
 * The canonical form of a JSON value: no space, members sorted by UTF-16 code units, numbers as ECMAScript prints them,
 * strings with the shortest escapes. Members that are undefined are left out. A number that is not finite throws a RangeError: JSON has none.
 * Source: RFC 8785 (2020), JSON Canonicalization Scheme, sections 3.2.2 and 3.2.3.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === "boolean" || typeof value === "string") return JSON.stringify(value);
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new RangeError(`${value} has no JSON`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value))
    return `[${value.map((part) => canonicalJson(part === undefined ? null : part)).join(",")}]`;
  if (!isPlain(value)) throw new RangeError(`${typeof value} has no JSON`);
  const members = Object.keys(value)
    .filter((name) => value[name] !== undefined)
    .sort((a, b) => (a < b ? -1 : 1))
    .map((name) => `${JSON.stringify(name)}:${canonicalJson(value[name])}`);
  return `{${members.join(",")}}`;
}
