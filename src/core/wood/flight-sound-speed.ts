import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Sound speed from the time a pulse takes along the piece: c = L / t. E is density c^2. length: m; time: s. Result: m/s. Source: plane wave in a rod.
 */
export const flightSoundSpeed = (length: number, time: number): number => length / time;

export const flightSoundSpeedMethod = woodMethod({
  id: "flight-stiffness",
  name: "sound speed and Young's modulus from the time of flight",
  inputs: {
    density: positive("kg/m3", "density"),
    length: positive("m", "path of the pulse"),
    time: positive("s", "time of flight"),
  },
  fields: {
    soundSpeed: { meaning: "sound speed along the path", dimension: "m/s" },
    youngsModulus: { meaning: "Young's modulus", dimension: "Pa" },
  },
  source: sources.rod,
  run: ({ density, length, time }) => {
    const soundSpeed = flightSoundSpeed(length, time);
    return { soundSpeed, youngsModulus: density * soundSpeed ** 2 };
  },
});
