// Uncertainty of a result: the model's text, its inputs and their laws.
import { fromSi, unitFromText } from "../../../src/core/units/index.ts";
import type { Inputs, StatsCase } from "../stats-case.ts";
import { modelText } from "./model-text.ts";
import { statedInputs } from "./stated-inputs.ts";
import type { StatsAdapters } from "./stats-adapter.ts";

type Result = Readonly<Record<string, unknown>>;
const textOf = ({ options }: StatsCase): string => String(options.model ?? "");
const numbersOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Whether effective degrees of freedom are cut to a whole number, as the words say it. */
const truncated = (df: string): Inputs =>
  df === "" ? {} : { truncate: /truncat|lower integer/.test(df) && !/\b(not|no|without|un)\b ?truncat/.test(df) };

/** A budget: its components are given and not a model. */
function budgetOf({ data, options }: StatsCase): Inputs | null {
  const components = data.component_u ?? (Array.isArray(data.u) ? data.u : undefined);
  if (components === undefined || options.model !== undefined) return null;
  const df = String(options.df ?? "");
  return {
    component_u: components,
    component_df: data.component_df ?? data.df,
    component_sensitivity: data.component_sensitivity ?? data.component_c ?? data.sensitivity ?? data.c,
    estimate: data.estimate ?? data.value,
    level: options.level,
    ...truncated(df),
  };
}

/** A calibration line `y = a + b (x - x0)`: both columns are lists, and the line's own constants are not among the data. */
function lineOf(one: StatsCase): Inputs | null {
  const [left = "", right] = textOf(one).split("=");
  const y = left.trim();
  if (right === undefined || !Array.isArray(one.data[y])) return null;
  const { symbols } = modelText(`q = ${right}`);
  const x = symbols.find((symbol) => symbol !== y && Array.isArray(one.data[symbol]));
  const x0 = symbols.find((symbol) => typeof one.options[symbol] === "number");
  if (x === undefined) return null;
  return {
    x: one.data[x],
    y: one.data[y],
    x0: x0 === undefined ? undefined : one.options[x0],
    predict_at: one.options.predict_at,
    level: one.options.level,
  };
}

const given = (inputs: Inputs): Inputs =>
  Object.fromEntries(Object.entries(inputs).filter(([, value]) => value !== undefined && value !== null));

function gumInputs(one: StatsCase): Inputs {
  const other = budgetOf(one) ?? lineOf(one);
  if (other) return given(other);
  const { model, symbols } = modelText(textOf(one));
  const { inputs, correlations } = statedInputs(one, symbols);
  const df = truncated(String(one.options.df ?? ""));
  return given({ model, inputs, correlations, level: one.options.level, ...df });
}

/** R, u_R, … of several results, and r_RX of each pair. */
function namedFields(result: Result): Result {
  const pairs = [...numbersOf(result.correlations), ...numbersOf(result.input_correlations)] as {
    between: readonly [string, string];
    coefficient: number;
  }[];
  const results = numbersOf(result.results) as Result[];
  return Object.fromEntries([
    ...results.flatMap((each) => [
      [String(each.name), each.value],
      ...Object.entries(each).map(([field, value]) =>
        field === "u_ignoring_correlation"
          ? [`u_${each.name}_ignoring_correlation`, value]
          : [`${field}_${each.name}`, value],
      ),
    ]),
    ...pairs.flatMap(({ between: [a, b], coefficient }) => [
      [`r_${a}${b}`, coefficient],
      [`r_${b}${a}`, coefficient],
      [`r_${a}_${b}`, coefficient],
      [`r_${b}_${a}`, coefficient],
    ]),
  ]);
}

/** Lists in the case's order of inputs, values in the unit that the model's text asks for. */
function gumFields(result: Result, one: StatsCase): Result {
  if (!Array.isArray(result.inputs)) return result;
  const { symbols, unit: wanted } = modelText(textOf(one));
  const { order } = statedInputs(one, symbols);
  const unit = wanted === null ? null : unitFromText(wanted);
  const shown = (value: unknown): unknown =>
    typeof value === "number" && unit ? fromSi(value, unit) : Array.isArray(value) ? value.map(shown) : value;
  const names = result.inputs as readonly string[];
  const inOrder = (list: unknown) => order.map((symbol) => numbersOf(list)[names.indexOf(symbol)]);
  const amounts = ["value", "u", "U", "U95", "U99", "u_ignoring_correlation", "second_order_u", "second_order_shift"];
  return {
    ...result,
    ...namedFields(result),
    ...Object.fromEntries(amounts.map((field) => [field, shown(result[field])])),
    u_c: shown(result.u),
    share: inOrder(result.share),
    sensitivity: shown(inOrder(result.sensitivity)),
  };
}

const WORDS: Readonly<Record<string, string>> = { sum: " + ", product: " * " };

/** `count` inputs of one law under names of their own, for a model that is one word. */
function drawnInputs(one: StatsCase): Inputs {
  const sign = WORDS[textOf(one).trim()];
  if (sign === undefined) {
    const { model, symbols } = modelText(textOf(one));
    const { inputs, correlations } = statedInputs(one, symbols);
    return { model, inputs, correlations };
  }
  const inputs = (numbersOf(one.data.inputs) as Result[])
    .flatMap((entry) => Array.from({ length: Number(entry.count ?? 1) }, () => entry))
    .map((entry, at) => ({ ...entry, name: `x${at + 1}` }));
  return { model: inputs.map(({ name }) => name).join(sign), inputs };
}

export const uncertaintyAdapters: StatsAdapters = {
  gum: { inputs: gumInputs, fields: gumFields },
  "monte-carlo-uncertainty": {
    inputs: (one) => {
      const { level, draws, interval, seed } = one.options;
      return given({ ...drawnInputs(one), level, draws, interval, seed });
    },
  },
};
