// Places counted from another start: a formula further down keeps equal when something above it is edited.

/** A copy of plain syntax in which every `from` and `to` is smaller by `by`. */
export function rebased<T>(value: T, by: number): T {
  if (Array.isArray(value)) return value.map((each: unknown) => rebased(each, by)) as T;
  if (typeof value !== "object" || value === null) return value;
  const shifted = Object.entries(value).map(([key, each]: [string, unknown]) =>
    (key === "from" || key === "to") && typeof each === "number" ? [key, each - by] : [key, rebased(each, by)],
  );
  return Object.fromEntries(shifted) as T;
}
