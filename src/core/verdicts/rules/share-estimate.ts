import type { Estimate } from "../../base/index.ts";
import { wilsonInterval } from "../../questions/index.ts";

/** How often something held, as an estimate: `held` of `tried` (at least 1), with Wilson's interval at 95 %. */
export function shareEstimate(name: string, held: number, tried: number): Estimate {
  const level = 0.95;
  const { estimate, low, high } = wilsonInterval(held, tried, level);
  return { name, value: estimate, low, high, level, unit: "1" };
}
