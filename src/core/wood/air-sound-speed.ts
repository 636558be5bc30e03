import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Speed of sound in air: 331.3 sqrt(T / 273.15) m/s. temperature: kelvin, > 0. Relative 1e-3 in a workshop. Source: ideal gas, 331.3 m/s at 0 degrees Celsius.
 */
export const airSoundSpeed = (temperature: number): number => 331.3 * Math.sqrt(temperature / 273.15);

export const airSoundSpeedMethod = woodMethod({
  id: "air-sound-speed",
  name: "speed of sound in air",
  inputs: { temperature: { ...positive("K", "temperature"), usual: usualRanges.airTemperature } },
  fields: { soundSpeed: { meaning: "speed of sound", dimension: "m/s" } },
  source: sources.air,
  run: ({ temperature }) => ({ soundSpeed: airSoundSpeed(temperature) }),
});
