import { FREE_BAR_CONSTANT } from "./free-bar-roots.ts";
import { shearCautions } from "./shear-cautions.ts";
import { sources } from "./sources.ts";
import { positive, soundSpeedField, woodMethod } from "./wood-method.ts";

/**
 * Sound speed from a tap test, without any mass: c = 0.972838 f L^2 / h. frequency: Hz; length, thickness: m. Result: m/s. Source: free bar, mass eliminated.
 */
export const tapSoundSpeed = (frequency: number, length: number, thickness: number): number =>
  (Math.sqrt(FREE_BAR_CONSTANT) * frequency * length ** 2) / thickness;

export const tapSoundSpeedMethod = woodMethod({
  id: "tap-sound-speed",
  name: "sound speed from a tap, no mass needed",
  inputs: {
    frequency: positive("Hz", "lowest bending frequency, held free"),
    length: positive("m", "length along the grain"),
    thickness: positive("m", "thickness"),
  },
  fields: { soundSpeed: soundSpeedField("sound speed along the length") },
  source: sources.beamTheory,
  run: ({ frequency, length, thickness }) => ({ soundSpeed: tapSoundSpeed(frequency, length, thickness) }),
  cautions: ({ length, thickness }) => shearCautions("Length", length, thickness),
});
