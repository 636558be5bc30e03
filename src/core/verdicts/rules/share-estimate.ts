import type { Estimate } from "../../base/index.ts";
import { levelAmong, wilsonInterval } from "../../questions/index.ts";

/** How often something held, as an estimate: `held` of `tried` (at least 1), with Wilson's interval at 95 %, or at the level of one of `asked` questions. */
export function shareEstimate(name: string, held: number, tried: number, asked = 1): Estimate {
  const level = levelAmong(asked);
  const { estimate, low, high } = wilsonInterval(held, tried, level);
  return { name, value: estimate, low, high, level, unit: "1" };
}
