import { sources } from "./sources.ts";
import { modulusField, positive, soundSpeedField, woodDensity, woodMethod } from "./wood-method.ts";

/**
 * Sound speed from the lowest lengthwise resonance of a slender rod: c = 2 L f. E is density c^2.
 * length: m; frequency: Hz. Result: m/s. Not for a wide plate. Source: plane wave in a rod.
 */
export const longitudinalSoundSpeed = (length: number, frequency: number): number => 2 * length * frequency;

export const longitudinalSoundSpeedMethod = woodMethod({
  id: "longitudinal-stiffness",
  name: "sound speed and Young's modulus from a lengthwise resonance",
  inputs: {
    density: woodDensity(),
    length: positive("m", "length"),
    frequency: positive("Hz", "lowest lengthwise resonance"),
  },
  fields: {
    soundSpeed: soundSpeedField("sound speed along the length"),
    youngsModulus: modulusField("Young's modulus"),
  },
  source: sources.rod,
  run: ({ density, length, frequency }) => {
    const soundSpeed = longitudinalSoundSpeed(length, frequency);
    return { soundSpeed, youngsModulus: density * soundSpeed ** 2 };
  },
});
