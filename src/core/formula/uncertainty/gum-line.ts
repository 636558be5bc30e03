import { declined, type MethodFields, type MethodInputs, type Outcome, succeeded } from "../../base/index.ts";
import { compensatedSum, coverageFactor, mean, sumOfSquares } from "../../numerics/index.ts";
import type { Coverage } from "./coverage-fields.ts";

const numbers = (value: unknown): readonly number[] =>
  Array.isArray(value) || value instanceof Float64Array
    ? Array.from(value as readonly unknown[], (one) => (typeof one === "number" ? one : Number.NaN))
    : [];

/** One value or a list, as it was asked. */
function asAsked(asked: unknown, values: readonly number[]): number | readonly number[] | null {
  return typeof asked === "number" ? (values[0] ?? null) : values.length > 0 ? values : null;
}

/**
 * A calibration line y = a + b (x - x0) by least squares with the covariance of a and b, and what it says at a new place: a + b d with
 * u^2 = u_a^2 + d^2 u_b^2 + 2 d u_a u_b r. Source: JCGM 100:2008, H.3.
 */
export function gumLine(inputs: MethodInputs, { level }: Coverage): Outcome<MethodFields> {
  const [allX, allY] = [numbers(inputs.x), numbers(inputs.y)];
  if (allX.length !== allY.length) return declined("out-of-domain", { name: "y", needed: "a list as long as x" });
  const kept = allX.flatMap((one, i) => (Number.isNaN(one) || Number.isNaN(allY[i]) ? [] : [i]));
  const [x, y] = [kept.map((i) => allX[i] as number), kept.map((i) => allY[i] as number)];
  const n = x.length;
  if (n < 3) return declined("too-few-records", { have: n, need: 3 });
  if (![...x, ...y].every(Number.isFinite)) return declined("not-finite", { name: "a reading" });
  const spread = sumOfSquares(x);
  if (!(spread > 0)) return declined("no-spread", { column: "x" });
  const x0 = typeof inputs.x0 === "number" ? inputs.x0 : 0;
  const [meanX, meanY] = [mean(x), mean(y)];
  const b = compensatedSum(x.map((one, i) => (one - meanX) * ((y[i] as number) - meanY))) / spread;
  const a = meanY - b * (meanX - x0);
  const residuals = x.map((one, i) => (y[i] as number) - meanY - b * (one - meanX));
  const df = n - 2;
  const s = Math.sqrt(compensatedSum(residuals.map((one) => one ** 2)) / df);
  const uncertaintyAt = (place: number) => s * Math.sqrt(1 / n + (place - meanX) ** 2 / spread);
  const [uA, uB] = [uncertaintyAt(x0), s / Math.sqrt(spread)];
  const places = typeof inputs.predict_at === "number" ? [inputs.predict_at] : numbers(inputs.predict_at);
  if (!places.every(Number.isFinite)) return declined("not-finite", { name: "predict_at" });
  const uValue = places.map(uncertaintyAt);
  const asked = inputs.predict_at;
  const k = (at: number) => coverageFactor(at, df);
  const fields = {
    a,
    u_a: uA,
    b,
    u_b: uB,
    r_ab: -(meanX - x0) / Math.sqrt(spread / n + (meanX - x0) ** 2),
    s,
    df,
    value: asAsked(
      asked,
      places.map((place) => meanY + b * (place - meanX)),
    ),
    u_value: asAsked(asked, uValue),
    u: asAsked(asked, uValue),
    k95: k(0.95),
    k99: k(0.99),
    k: k(level),
    U95: asAsked(
      asked,
      uValue.map((one) => one * k(0.95)),
    ),
    U99: asAsked(
      asked,
      uValue.map((one) => one * k(0.99)),
    ),
    U: asAsked(
      asked,
      uValue.map((one) => one * k(level)),
    ),
    set_aside: allX.length - n,
    chosen: "line by least squares; k of Student's t with n - 2 degrees of freedom",
  };
  return [a, b, s, uA, uB].every(Number.isFinite) ? succeeded(fields) : declined("not-finite", { name: "the line" });
}
