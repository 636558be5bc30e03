// The line a finding's slope draws through one group of points, and the band of its interval: no second fit, so that
// picture and sentence cannot differ.
import type { Estimate } from "../base/index.ts";

export type FittedLine = {
  readonly at: readonly { readonly x: number; readonly y: number }[];
  readonly band: readonly { readonly x: number; readonly low: number; readonly high: number }[];
};

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const STEPS = 24;

/**
 * Line with a given slope through the middle of each group, with the pointwise interval of its height:
 * y = mean(y) + b (x − mean(x)), half-width = t sqrt(s²/n + (x − mean(x))² se(b)²). s² pools the groups' squares about their lines.
 * groups: coordinates of each group, at least one point in each. slope: in units of y per x; its interval gives t as half-width over
 * standard error. logarithmic: the line is straight in the logarithms of both, and all coordinates are above zero.
 * Source: Draper and Smith, Applied Regression Analysis, 3rd ed., 1998, section 3.1 (variance of a fitted value).
 */
export function fittedLine(
  groups: readonly { readonly x: readonly number[]; readonly y: readonly number[] }[],
  slope: Pick<Estimate, "value" | "low" | "high" | "standardError" | "degreesOfFreedom">,
  logarithmic: boolean,
): readonly FittedLine[] {
  const into = logarithmic ? Math.log : (value: number) => value;
  const back = logarithmic ? Math.exp : (value: number) => value;
  const lines = groups.map((group) => {
    const [x, y] = [group.x.map(into), group.y.map(into)];
    return { x, y, meanX: mean(x), meanY: mean(y) };
  });
  const squares = lines.flatMap(({ x, y, meanX, meanY }) =>
    y.map((value, i) => (value - meanY - slope.value * ((x[i] ?? 0) - meanX)) ** 2),
  );
  const count = squares.length;
  const degrees = slope.degreesOfFreedom ?? Math.max(1, count - groups.length - 1);
  const variance = squares.reduce((sum, square) => sum + square, 0) / degrees;
  const error = slope.standardError ?? 0;
  const multiple = error > 0 ? (slope.high - slope.low) / 2 / error : 0;
  return lines.map(({ x, meanX, meanY }) => {
    const [from, to] = [x.reduce((a, b) => Math.min(a, b)), x.reduce((a, b) => Math.max(a, b))];
    const positions = Array.from({ length: STEPS + 1 }, (_, step) => from + ((to - from) * step) / STEPS);
    const heightAt = (position: number) => meanY + slope.value * (position - meanX);
    return {
      at: positions.map((position) => ({ x: back(position), y: back(heightAt(position)) })),
      band:
        multiple === 0
          ? []
          : positions.map((position) => {
              const half = multiple * Math.sqrt(variance / x.length + (position - meanX) ** 2 * error * error);
              return { x: back(position), low: back(heightAt(position) - half), high: back(heightAt(position) + half) };
            }),
    };
  });
}
