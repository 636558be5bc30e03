// What a line of the `method` command says of the uncertainty of its inputs, and what follows for the answer.
import {
  declined,
  type InputSpec,
  type Method,
  type MethodInputs,
  type Outcome,
  succeeded,
} from "../core/base/index.ts";
import { type PropagatedFields, propagatedUncertainties } from "../core/formula/index.ts";
import { unitFromCode } from "../core/units/index.ts";
import { amountFromJson } from "./amount-from-json.ts";

type Json = Readonly<Record<string, unknown>>;
const isRecord = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isAmount = ({ kind }: InputSpec): boolean => kind === "quantity" || kind === "number";

/** Standard uncertainties by input, in coherent SI: `uncertainty` beside `value`, in the same unit. */
function statedUncertainties(
  specs: Readonly<Record<string, InputSpec>>,
  inputs: Json,
): Outcome<Readonly<Record<string, number>>> {
  const made: Record<string, number> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const spec = specs[name];
    const isInList = Array.isArray(value) && value.some((each: unknown) => isRecord(each) && "uncertainty" in each);
    const isStated = isRecord(value) && value.uncertainty !== undefined && value.uncertainty !== null;
    if (!spec || spec.kind === "table" || !(isStated || isInList)) continue;
    if (!isStated || !isAmount(spec) || Array.isArray(value.value))
      return declined("out-of-domain", { name: `uncertainty of ${name}`, needed: "an input that is one amount" });
    const unit = spec.dimension === undefined ? null : unitFromCode(spec.dimension);
    const beside = { value: value.uncertainty, ...(value.unit === undefined ? {} : { unit: value.unit }) };
    const read = amountFromJson(`uncertainty of ${name}`, beside, { unit, difference: true });
    if (!read.ok) return read;
    if (read.value.value < 0) return declined("negative-uncertainty", { name });
    made[name] = read.value.value;
  }
  return succeeded(made);
}

/**
 * Uncertainties of the fields of an answer; null where no input has one. inputs: as the line has them; read: as the method takes them;
 * correlations: the line's own, a list of {between: [input, input], coefficient}.
 */
export function uncertainInputs(
  method: Method,
  inputs: Json,
  read: MethodInputs,
  correlations: unknown,
): Outcome<PropagatedFields | null> {
  const stated = statedUncertainties(method.inputs, inputs);
  if (!stated.ok) return stated;
  if (Object.keys(stated.value).length === 0)
    return correlations === undefined || correlations === null
      ? succeeded(null)
      : declined("out-of-domain", { name: "correlations", needed: "an uncertainty beside each input that they name" });
  return propagatedUncertainties(method, read, stated.value, correlations);
}
