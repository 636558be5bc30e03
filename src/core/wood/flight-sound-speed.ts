import { sources } from "./sources.ts";
import { modulusField, positive, soundSpeedField, woodDensity, woodMethod } from "./wood-method.ts";

/**
 * Sound speed from the time a pulse takes along the piece: c = L / t. E is density c^2. length: m; time: s. Result: m/s. Source: plane wave in a rod.
 */
export const flightSoundSpeed = (length: number, time: number): number => length / time;

export const flightSoundSpeedMethod = woodMethod({
  id: "flight-stiffness",
  name: "sound speed and Young's modulus from the time of flight",
  inputs: {
    density: woodDensity(),
    length: positive("m", "path of the pulse"),
    time: positive("s", "time of flight"),
  },
  fields: {
    soundSpeed: soundSpeedField("sound speed along the path"),
    youngsModulus: modulusField("Young's modulus"),
  },
  source: sources.rod,
  run: ({ density, length, time }) => {
    const soundSpeed = flightSoundSpeed(length, time);
    return { soundSpeed, youngsModulus: density * soundSpeed ** 2 };
  },
});
