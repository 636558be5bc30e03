// Is the rig right: bias, linearity, repeatability and drift against reference values, in one answer.
import type { Caution, Check, Estimate, Finding } from "../base/index.ts";
import { fUpperTail, mean } from "../numerics/index.ts";
import { finding, refused } from "../questions/index.ts";
import { quotientUnit, sameDimension, scaleFactor } from "../units/index.ts";
import type { BiasLine, BiasTerm } from "./bias-line.ts";
import { biasLine } from "./bias-line.ts";
import { rigBias } from "./methods/rig-bias.ts";
import { rigLinearity } from "./methods/rig-linearity.ts";
import type { Repeatability } from "./repeatability.ts";
import { repeatability } from "./repeatability.ts";
import type { RigErrors, RigInput } from "./rig-errors.ts";
import { rigErrors } from "./rig-errors.ts";
import { rigSentence } from "./rig-sentence.ts";

const FEWEST = 3;
const FEW = 8;
const LEVEL = 0.95;

function termEstimate(name: string, term: BiasTerm, unit: string, degreesOfFreedom: number): Estimate {
  const by = scaleFactor(unit);
  return {
    name,
    value: term.value / by,
    low: term.low / by,
    high: term.high / by,
    level: LEVEL,
    unit,
    standardError: term.standardError / by,
    degreesOfFreedom,
  };
}

/** Interval of a standard deviation: log s ± z / sqrt(2 df), the normal form of its logarithm. Source: derived by the delta method from var(s²) = 2 σ⁴ / df. */
function repeatEstimate(repeat: Repeatability, unit: string): Estimate {
  const value = repeat.standardDeviation / scaleFactor(unit);
  const standardError = value / Math.sqrt(2 * repeat.degreesOfFreedom);
  const stretch = Math.exp(1.959963984540054 / Math.sqrt(2 * repeat.degreesOfFreedom));
  return {
    name: "repeatability",
    value,
    low: value / stretch,
    high: value * stretch,
    level: LEVEL,
    unit,
    standardError,
    degreesOfFreedom: repeat.degreesOfFreedom,
  };
}

/** Repeats under the same conditions: the same reference on the same day where that was done, else the same reference. */
function repeatsOf(errors: RigErrors): Repeatability | null {
  const dated = repeatability(
    errors.error,
    Array.from(errors.reference, (value, i) => `${value} ${errors.days[i]}`),
  );
  return dated !== null && dated.degreesOfFreedom >= 2 ? dated : repeatability(errors.error, [...errors.reference]);
}

/** Whether the means at the references bend away from the line: F of their scatter about it. */
function straightness(errors: RigErrors, line: BiasLine): Check | null {
  const sets = new Map<number, number[]>();
  for (const [i, value] of errors.reference.entries())
    sets.set(value, [...(sets.get(value) ?? []), errors.error[i] ?? Number.NaN]);
  const n = errors.error.length;
  const [df1, df2] = [sets.size - 2, n - sets.size];
  if (df1 < 1 || df2 < 1 || line.linearity === null || line.drift !== null) return null;
  const pure = [...sets.values()]
    .flatMap((own) => own.map((error) => (error - mean(own)) ** 2))
    .reduce((sum, square) => sum + square, 0);
  const residual = line.residualDeviation ** 2 * line.degreesOfFreedom;
  if (!(pure > 0)) return null;
  const f = Math.max(0, residual - pure) / df1 / (pure / df2);
  const p = fUpperTail(f, df1, df2);
  return {
    id: "lack-of-fit",
    name: "Straight across the range",
    value: p,
    limit: 0.05,
    passed: p >= 0.05,
    sentence:
      p >= 0.05
        ? "The bias follows a straight line across the range, as far as the repeats can tell."
        : "The bias bends across the range more than the repeats explain.",
  };
}

function checksOf(errors: RigErrors, line: BiasLine, repeat: Repeatability | null): readonly Check[] {
  const straight = straightness(errors, line);
  const ratio = repeat === null ? null : Math.abs(line.bias.value) / repeat.standardDeviation;
  return [
    ...(straight ? [straight] : []),
    ...(ratio === null || !Number.isFinite(ratio)
      ? []
      : [
          {
            id: "bias-beside-repeatability",
            name: "Bias beside repeatability",
            value: ratio,
            limit: 1,
            passed: ratio <= 1,
            sentence:
              ratio <= 1
                ? "The bias is smaller than the scatter of single readings."
                : "The bias is larger than the scatter of single readings, so correcting readings pays.",
          },
        ]),
  ];
}

/**
 * The answer to a rig check. Estimates: bias (in the middle of the range), linearity as "slope of bias on reference", drift a day, repeatability.
 * Refuses fewer than three records, and readings without any scatter. Readings of one piece are taken as separate evidence.
 */
export function checkRig(input: RigInput): Finding {
  const { reading, reference, name } = input;
  if (!sameDimension(reading.dimension, reference.dimension))
    return refused("wrong-dimension", { name: reference.name, found: reference.unit, needed: reading.unit });
  const errors = rigErrors(input);
  const n = errors.error.length;
  if (n === 0) return refused("no-records", { table: input.table.name });
  if (n < FEWEST) return refused("too-few-records", { have: n, need: FEWEST });
  const line = biasLine(errors);
  if (line === null) return refused("perfect-fit", { column: reading.name });
  const repeat = repeatsOf(errors);
  const unit = reading.unit;
  const df = line.degreesOfFreedom;
  const few: readonly Caution[] = n < FEW ? [{ code: "few-records", facts: { have: n, need: FEW } }] : [];
  const checks = checksOf(errors, line, repeat);
  const bends: readonly Caution[] = checks.some((check) => check.id === "lack-of-fit" && !check.passed)
    ? [{ code: "not-straight", facts: { column: reference.name } }]
    : [];
  const aside: readonly Caution[] =
    errors.setAside.length > 0 ? [{ code: "records-set-aside", facts: { count: errors.setAside.length } }] : [];
  return finding({
    kind: "rig",
    table: input.table,
    sentence: rigSentence({ name, line, repeat, unit, dimension: reading.dimension }),
    estimate: [
      termEstimate(`bias of ${name}`, line.bias, unit, df),
      ...(line.linearity ? [termEstimate("slope of bias on reference", line.linearity, "1", df)] : []),
      ...(line.drift
        ? [
            termEstimate(
              "drift of bias",
              {
                ...line.drift,
                value: line.drift.value / 86_400,
                low: line.drift.low / 86_400,
                high: line.drift.high / 86_400,
                standardError: line.drift.standardError / 86_400,
              },
              quotientUnit(unit, "d"),
              df,
            ),
          ]
        : []),
      ...(repeat && repeat.standardDeviation > 0 ? [repeatEstimate(repeat, unit)] : []),
    ],
    rows: { used: errors.used, setAside: errors.setAside },
    checks,
    cautions: [...bends, ...few, ...aside],
    method: line.linearity ? rigLinearity : rigBias,
    chosenBecause: line.linearity
      ? "the rig was checked against more than one reference"
      : "the rig was checked against one reference",
    columns: [reading, reference, ...(line.drift && input.date ? [input.date] : [])],
  });
}
