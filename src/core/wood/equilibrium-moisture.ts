import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { notNegative, positive, woodMethod } from "./wood-method.ts";

/**
 * Moisture content towards which wood drifts in air (two-hydrate sorption): fraction of oven-dry mass.
 * temperature: kelvin; humidity: fraction, 0 <= H < 1. Accuracy about half a point. Weeks for a plate to get there.
 * W, K, K1, K2 as functions of t in degrees Celsius; x = K H; M = 18/W [x/(1 - x) + (K1 x + 2 K1 K2 x^2)/(1 + K1 x + K1 K2 x^2)].
 * Source: Wood Handbook (GTR-190), equation 4-5. @example equilibriumMoisture(293.15, 0.65) -> 0.12
 */
export function equilibriumMoisture(temperature: number, humidity: number): number {
  const t = temperature - 273.15;
  const W = 349 + 1.29 * t + 0.0135 * t * t;
  const K = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const K1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const K2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const x = K * humidity;
  return (18 / W) * (x / (1 - x) + (K1 * x + 2 * K1 * K2 * x * x) / (1 + K1 * x + K1 * K2 * x * x));
}

export const equilibriumMoistureMethod = woodMethod({
  id: "equilibrium-moisture",
  name: "equilibrium moisture content in air",
  inputs: {
    temperature: { ...positive("K", "temperature of the air"), usual: usualRanges.sorptionTemperature },
    humidity: { ...notNegative("1", "relative humidity, fraction"), below: 1, usual: usualRanges.sorptionHumidity },
  },
  fields: { moisture: { meaning: "moisture content reached in the end", dimension: "%MC" } },
  source: sources.handbook,
  run: ({ temperature, humidity }) => ({ moisture: equilibriumMoisture(temperature, humidity) }),
});
