import { sources } from "./sources.ts";
import { soundSpeedField, woodDensity, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Sound speed along the direction of the modulus: c = sqrt(E / density). youngsModulus: Pa; density: kg/m3. Result: m/s. Source: plane wave in a rod.
 */
export const soundSpeed = (youngsModulus: number, density: number): number => Math.sqrt(youngsModulus / density);

export const soundSpeedMethod = woodMethod({
  id: "sound-speed",
  name: "sound speed from modulus and density",
  inputs: { youngsModulus: woodModulus("Young's modulus"), density: woodDensity() },
  fields: {
    soundSpeed: soundSpeedField("sound speed"),
    specificModulus: { meaning: "E over density", dimension: "m2/s2" },
  },
  source: sources.rod,
  run: ({ youngsModulus, density }) => ({
    soundSpeed: soundSpeed(youngsModulus, density),
    specificModulus: youngsModulus / density,
  }),
});
