// Where two JSON values differ, as paths in words.

export type Difference = { readonly at: string; readonly before: string; readonly after: string };
export type Closeness = { readonly relative: number; readonly texts: boolean };

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;
const SHOWN = 120;
const shown = (value: unknown) =>
  value === undefined ? "absent" : (JSON.stringify(value) ?? "absent").slice(0, SHOWN);
const close = (a: number, b: number, relative: number) =>
  Object.is(a, b) || Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b));

/** Every place at which two JSON values differ. Numbers within the relative closeness count as equal; texts are compared if asked. */
export function differenceBetween(
  before: unknown,
  after: unknown,
  closeness: Closeness,
  at = "",
): readonly Difference[] {
  if (typeof before === "number" && typeof after === "number")
    return close(before, after, closeness.relative) ? [] : [{ at, before: shown(before), after: shown(after) }];
  if (typeof before === "string" && typeof after === "string")
    return before === after || !closeness.texts ? [] : [{ at, before: shown(before), after: shown(after) }];
  if (isObject(before) && isObject(after) && Array.isArray(before) === Array.isArray(after)) {
    const names = new Set([...Object.keys(before), ...Object.keys(after)]);
    return [...names].flatMap((name) =>
      differenceBetween(before[name], after[name], closeness, at === "" ? name : `${at}.${name}`),
    );
  }
  return before === after ? [] : [{ at, before: shown(before), after: shown(after) }];
}
