// Descriptions of one column, one-way tables, charts of the shop: columns by the names that the options give them, else by their kind.
import { normalLowerTail, normalQuantile } from "../../../src/core/numerics/index.ts";
import { columnsOf, type Inputs, modelOf, type StatsCase } from "../stats-case.ts";
import {
  alphabetical,
  isTexts,
  namedColumns,
  plainInputs,
  type StatsAdapter,
  type StatsAdapters,
} from "./stats-adapter.ts";

const lists = (one: StatsCase): readonly (readonly [string, readonly unknown[]])[] =>
  Object.entries(columnsOf(one)).flatMap(([name, list]) => (Array.isArray(list) ? [[name, list] as const] : []));
const isNumeric = (list: readonly unknown[]) => list.every((each) => each === null || typeof each === "number");

/** The one column of numbers: the model's or the option's, `x`, or the only one there is. */
function onlyColumn(one: StatsCase): Inputs {
  const columns = columnsOf(one);
  const { response } = modelOf(one);
  const named = [one.options.column, one.options.response, response, "x"].find(
    (name) => typeof name === "string" && name in columns,
  );
  const x = named === undefined ? lists(one).find(([, list]) => isNumeric(list))?.[1] : columns[String(named)];
  return { ...plainInputs(one), x };
}
const ofOneColumn: StatsAdapter = { inputs: onlyColumn };

/** `value ~ group`, or the columns that the options name. */
function grouped(one: StatsCase): Inputs {
  const columns = columnsOf(one);
  const { response, predictors } = modelOf(one);
  return {
    ...plainInputs(one),
    ...(response === "" ? {} : { value: columns[response] }),
    ...(predictors[0] === undefined ? {} : { group: columns[predictors[0]] }),
    ...namedColumns(one, { value: "response" }),
    ...namedColumns(one, { value: "value", group: "group" }),
  };
}
const ofGroups: StatsAdapter = { inputs: grouped };

/** Groups that are texts in the order of the alphabet, unless the case says another. */
function inOrder(one: StatsCase): Inputs {
  const inputs = grouped(one);
  return isTexts(inputs.group) ? { group_order: alphabetical(inputs.group), ...inputs } : inputs;
}

type Fields = Readonly<Record<string, unknown>>;

/** Pairs in the order and direction that the options name: a pair the other way round has its difference and its interval turned. */
function pairsAsAsked(result: Fields, one: StatsCase): Fields {
  const made = Array.isArray(result.pairs) ? result.pairs.map(String) : [];
  const asked = Array.isArray(one.options.pairs) ? one.options.pairs.map(String) : made;
  const isTurned = String(one.options.difference ?? "").startsWith("first");
  const turnedName = (name: string) => name.split(" | ").reverse().join(" | ");
  const places = asked.map((name) => ({
    at: made.indexOf(name) >= 0 ? made.indexOf(name) : made.indexOf(turnedName(name)),
    sign: made.indexOf(name) >= 0 === isTurned ? -1 : 1,
  }));
  if (places.some(({ at }) => at < 0)) return result;
  const opposite: Readonly<Record<string, string>> = { low: "high", high: "low" };
  return Object.fromEntries(
    Object.entries(result).map(([field, list]) => {
      if (field === "pairs") return [field, asked];
      if (!Array.isArray(list)) return [field, list];
      const [, stem, end] = /^(.*_)(low|high)$/.exec(field) ?? [];
      const other = end === undefined ? list : result[`${stem}${opposite[end]}`];
      const signed = field === "difference" || end !== undefined;
      return [
        field,
        places.map(({ at, sign }) =>
          sign < 0 && signed ? -Number((Array.isArray(other) ? other : list)[at]) : list[at],
        ),
      ];
    }),
  );
}

/** "normal 1.959964" is the quantile of a level in whole ten-thousandths; a plain number is itself. */
function multiplierOf(given: unknown): number | undefined {
  if (typeof given === "number") return given;
  const [, normal, digits] = /^(normal)?\s*([\d.]+)$/.exec(String(given ?? "").trim()) ?? [];
  if (digits === undefined) return undefined;
  const z = Number(digits);
  if (normal === undefined) return z;
  const level = Math.round(1e4 * (1 - 2 * normalLowerTail(-z))) / 1e4;
  return normalQuantile((1 + level) / 2);
}

/** A d2 to four places or fewer is a table's, to be used as it stands; one said to more is the computed one. */
function rounded(given: unknown): number | undefined {
  const digits = /([\d.]+)$/.exec(String(given ?? ""))?.[1];
  return digits === undefined || (digits.split(".")[1] ?? "").length > 4 ? undefined : Number(digits);
}

export const shopAdapters: StatsAdapters = {
  descriptive: ofOneColumn,
  "descriptive-nist": ofOneColumn,
  "individuals-chart": { inputs: (one) => ({ ...onlyColumn(one), d2: rounded(one.options.d2) }) },
  cusum: ofOneColumn,
  ewma: ofOneColumn,
  "anova-nist": ofGroups,
  "anova-welch": { inputs: inOrder },
  "games-howell": { inputs: inOrder, fields: pairsAsAsked },
  "kruskal-wallis": ofGroups,
  "bland-altman": {
    inputs: (one) => {
      const columns = columnsOf(one);
      const said = String(one.options.difference ?? "").split(/\s*-\s*|\s+minus\s+/);
      const quantities = lists(one).flatMap(([name, list]) => (isNumeric(list) ? [name] : []));
      const names = said.length === 2 && said.every((name) => name in columns) ? said : quantities;
      const [a, b] = names.map((name) => columns[name]);
      const plain = "a" in columns && "b" in columns && names !== said ? {} : { a, b };
      return { ...plainInputs(one), ...plain, multiplier: multiplierOf(one.options.multiplier) };
    },
  },
  "gauge-rr": {
    inputs: (one) => {
      const said = String(one.options.pool_interaction_when ?? "");
      const above = /p\s*>=?\s*([\d.]+)/.exec(said)?.[1];
      return {
        ...plainInputs(one),
        pool_above: above !== undefined ? Number(above) : /never/.test(said) ? 1 : undefined,
      };
    },
  },
  "en-zeta": {
    inputs: (one) => {
      const said = String(one.options.U_means ?? "");
      const k = /k\s*=\s*([\d.]+)/.exec(said)?.[1];
      return { ...plainInputs(one), k: k !== undefined ? Number(k) : /standard/.test(said) ? 1 : undefined };
    },
  },
};
