import type { MethodInputs, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";

type Domain = {
  readonly above?: number;
  readonly below?: number;
  readonly atMost?: number;
  readonly otherwise?: number;
};

/** One number of a run within its domain; `otherwise` where it is left out. Declines it by name. */
export function numberInput(
  inputs: MethodInputs,
  name: string,
  { above, below, atMost, otherwise }: Domain,
): Outcome<number> {
  const value = inputs[name] ?? otherwise;
  if (
    typeof value === "number" &&
    Number.isFinite(value) &&
    !(above !== undefined && value <= above) &&
    !(below !== undefined && value >= below) &&
    !(atMost !== undefined && value > atMost)
  )
    return succeeded(value);
  const low = above === undefined ? "a number" : `a number above ${above}`;
  const high = below !== undefined ? ` and below ${below}` : atMost !== undefined ? ` and at most ${atMost}` : "";
  return declined("out-of-domain", { name, needed: `${low}${high}` });
}

/** Several numbers of a run at once, in the order of their domains. Declines the first that is outside. */
export function numberInputs<N extends string>(
  inputs: MethodInputs,
  domains: Readonly<Record<N, Domain>>,
): Outcome<Readonly<Record<N, number>>> {
  const numbers = {} as Record<N, number>;
  for (const name of Object.keys(domains) as N[]) {
    const value = numberInput(inputs, name, domains[name]);
    if (!value.ok) return value;
    numbers[name] = value.value;
  }
  return succeeded(numbers);
}
