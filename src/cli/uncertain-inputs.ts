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
import { measurementFromText } from "../core/records/index.ts";
import { unitFromCode } from "../core/units/index.ts";
import { amountFromJson } from "./amount-from-json.ts";

type Json = Readonly<Record<string, unknown>>;
const isRecord = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);
/** Kinds of inputs that are amounts, or lists of them. */
const AMOUNTS: ReadonlySet<string> = new Set(["quantity", "number", "quantities"]);

/** How a text says an uncertainty of its own: "182.4 ± 0.1 g", "+/-", "182.4(1) g". Nothing else need be looked at. */
const SAID = /±|\+\/?-|\(\d+\)/;

/** What an amount says of its uncertainty, and in which unit: in its own text, or beside it. */
function saidOf(amount: unknown): { readonly inText?: Json; readonly beside?: Json } {
  const record = isRecord(amount) ? amount : { value: amount };
  const unit = record.unit === undefined || record.unit === null ? {} : { unit: record.unit };
  const beside =
    record.uncertainty === undefined || record.uncertainty === null
      ? {}
      : { beside: { value: record.uncertainty, ...unit } };
  if (typeof record.value !== "string" || !SAID.test(record.value)) return beside;
  const read = measurementFromText(record.value, "");
  if (!read.ok || read.value.uncertainty === null) return beside;
  const own = read.value.unit === null ? unit : { unit: read.value.unit };
  return { ...beside, inText: { value: read.value.uncertainty, ...own } };
}

/** Standard uncertainties by input, in coherent SI: `uncertainty` beside `value`, in the same unit, or behind ± in its text. */
function statedUncertainties(
  specs: Readonly<Record<string, InputSpec>>,
  inputs: Json,
): Outcome<Readonly<Record<string, number>>> {
  const made: Record<string, number> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const spec = specs[name];
    if (!spec || !AMOUNTS.has(spec.kind)) continue;
    const list: unknown = isRecord(value) ? value.value : value;
    const { inText, beside } = saidOf(value);
    const inList =
      Array.isArray(list) &&
      list.some((each: unknown) => typeof each !== "number" && Object.keys(saidOf(each)).length > 0);
    const said = inText ?? beside;
    if (!said && !inList) continue;
    const place = `uncertainty of ${name}`;
    if (!said || Array.isArray(list))
      return declined("out-of-domain", { name: place, needed: "an input that is one amount" });
    if (inText && beside) return declined("out-of-domain", { name: place, needed: "to be said once" });
    const unit = spec.dimension === undefined ? null : unitFromCode(spec.dimension);
    const read = amountFromJson(place, said, { unit, difference: true });
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
