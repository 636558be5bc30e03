// A reference case to the inputs of its method: the case's own column names, told by its model, become the method's.

export type StatsCase = {
  readonly id: string;
  readonly method: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly options: Readonly<Record<string, unknown>>;
};

const read = (list: unknown): unknown =>
  Array.isArray(list)
    ? list.map((one: unknown) => (one === null ? Number.NaN : one === "Infinity" ? Number.POSITIVE_INFINITY : one))
    : list;

/** The method that a case is for: a degenerate case names it in its options. */
export const methodOf = ({ method, options }: StatsCase): string =>
  method === "degenerate" ? String(options["of"]) : method;

/** Inputs of a statistical case. */
export function caseInputs({ method, data, options }: StatsCase): Readonly<Record<string, unknown>> {
  const columns = Object.fromEntries(Object.entries(data).map(([name, list]) => [name, read(list)]));
  const inputs: Record<string, unknown> = { ...columns, ...options };
  const [left = "", right] = String(options["model"] ?? "")
    .split("~")
    .map((side) => side.trim());
  if (options["response"])
    Object.assign(inputs, {
      y: columns[String(options["response"])],
      x: columns[String(options["covariate"])],
      group: columns[String(options["group"])],
    });
  else if (right !== undefined) {
    const names = right
      .split("+")
      .map((name) => name.trim())
      .filter((name) => !/^[01]$/.test(name));
    inputs["y"] = columns[left];
    const points = options["predict_at"] as Readonly<Record<string, unknown>> | undefined;
    for (const [at, name] of names.entries()) {
      if (method === "ols-multiple")
        Object.assign(inputs, { [`x${at + 1}`]: columns[name], [`at_x${at + 1}`]: points?.[name] });
      if (method === "influence") inputs[`x${at === 0 ? "" : at + 1}`] = columns[name];
    }
    if (method !== "ols-multiple" && method !== "influence" && names[0] !== undefined) inputs["x"] = columns[names[0]];
  }
  if (options["cluster"]) inputs["cluster"] = columns[String(options["cluster"])];
  return inputs;
}

export const caseAdapter = { methodOf, caseInputs } as const;
