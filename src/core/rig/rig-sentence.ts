// The sentence of a rig check. The one place for it.
import { power } from "../base/index.ts";

import type { Dimension } from "../units/index.ts";
import { amountInWords, numberInWords, scaleFactor, unitForDisplay } from "../units/index.ts";
import type { BiasLine } from "./bias-line.ts";
import type { Repeatability } from "./repeatability.ts";

const YEAR = 365.25;
const directions: ReadonlyMap<string, readonly [string, string]> = new Map([
  ["mass", ["heavy", "light"]],
  ["temperature", ["warm", "cold"]],
]);

/** What too much and too little are called for what is measured: heavy and light for a mass, else too high and too low. */
function direction(dimension: Dimension, positive: boolean): string {
  const [only, ...more] = Object.keys(dimension);
  const words = (more.length === 0 && only !== undefined && dimension[only as keyof Dimension]?.join() === "1,1"
    ? directions.get(only)
    : undefined) ?? ["too high", "too low"];
  return positive ? words[0] : words[1];
}

type Said = {
  readonly name: string;
  readonly line: BiasLine;
  readonly repeat: Repeatability | null;
  readonly unit: string;
  readonly dimension: Dimension;
};

function biasInWords({ name, line, unit, dimension }: Said, by: number): string {
  const [bias, error] = [line.bias.value / by, line.bias.standardError / by];
  if (!line.bias.shown)
    return `The ${name.replaceAll(/[-_]/g, " ")} shows no bias (${amountInWords(bias, error, unit)})`;
  return `The ${name.replaceAll(/[-_]/g, " ")} reads ${amountInWords(Math.abs(bias), error, unit)} ${direction(dimension, bias > 0)}`;
}

function rangeInWords({ line, unit }: Said, by: number): string {
  if (line.linearity === null) return "at the one reference it was checked with";
  if (!line.linearity.shown) return line.bias.shown ? "the same across its range" : "anywhere in its range";
  const step = power(10, Math.round(Math.log10(Math.abs(line.middle / by))));
  const growth = amountInWords(Math.abs(line.linearity.value * step), line.linearity.standardError * step, unit);
  const way = line.linearity.value > 0 ? "more" : "less";
  return `at ${amountInWords(line.middle / by, null, unit)}, ${line.bias.shown ? "and" : "but reads"} ${growth} ${way} for every ${amountInWords(step, null, unit)}`;
}

function driftInWords({ line, unit }: Said, by: number): string {
  if (line.drift === null || !line.drift.shown) return "";
  const yearly = (line.drift.value * YEAR) / by;
  return `; it drifts ${yearly < 0 ? "down" : "up"} by ${amountInWords(Math.abs(yearly), (line.drift.standardError * YEAR) / by, unit)} a year`;
}

/** "The balance reads 0.31 ± 0.05 g heavy, the same across its range; repeatability 0.12 g." */
export function rigSentence(said: Said): string {
  const by = scaleFactor(said.unit);
  const scatter = said.repeat ? said.repeat.standardDeviation / by : 0;
  const repeats = said.repeat
    ? `repeatability ${[numberInWords(scatter, scatter / Math.sqrt(2 * said.repeat.degreesOfFreedom)), unitForDisplay(said.unit)].join(" ").trim()}`
    : "repeatability not known, for nothing was read twice";
  return `${biasInWords(said, by)}${said.line.linearity?.shown && said.line.bias.shown ? "" : ","} ${rangeInWords(said, by)}${driftInWords(said, by)}; ${repeats}.`;
}
