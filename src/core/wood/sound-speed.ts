import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Sound speed along the direction of the modulus: c = sqrt(E / density). youngsModulus: Pa; density: kg/m3. Result: m/s. Source: plane wave in a rod.
 */
export const soundSpeed = (youngsModulus: number, density: number): number => Math.sqrt(youngsModulus / density);

export const soundSpeedMethod = woodMethod({
  id: "sound-speed",
  name: "sound speed from modulus and density",
  inputs: { youngsModulus: positive("Pa", "Young's modulus"), density: positive("kg/m3", "density") },
  fields: {
    soundSpeed: { meaning: "sound speed", dimension: "m/s" },
    specificModulus: { meaning: "E over density", dimension: "m2/s2" },
  },
  source: sources.rod,
  run: ({ youngsModulus, density }) => ({
    soundSpeed: soundSpeed(youngsModulus, density),
    specificModulus: youngsModulus / density,
  }),
});
