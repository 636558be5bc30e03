/** What sort of JSON value one is, as a sentence of the method line says it. */
export function kindInWords(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  if (value === null) return "empty";
  if (value === undefined) return "left out";
  return { string: "a text", number: "a number", boolean: "yes or no" }[String(typeof value)] ?? "a record";
}
