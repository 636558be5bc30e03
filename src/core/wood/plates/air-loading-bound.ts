import { sources } from "../sources.ts";
import { leftOut, positive, woodDensity, woodMethod } from "../wood-method.ts";

/**
 * By how much the air can lower a plate's frequency at most: f_air/f_vacuum >= 1/sqrt(1 + 2 rho_air/(k density h)), k = 2 pi/wavelength of the bending,
 * as if air stood on both faces of an endless plate. density, airDensity: kg/m3; thickness: m; waveNumber: rad/m. Result: 1.
 * An unbaffled plate sees less. Source: added mass rho_air/k a face, e.g. Fahy and Gardonio, Sound and Structural Vibration (2007), chapter 4.
 */
export const airLoadingBound = (density: number, thickness: number, waveNumber: number, airDensity: number): number =>
  1 / Math.sqrt(1 + (2 * airDensity) / (waveNumber * density * thickness));

export const airLoadingMethod = woodMethod({
  id: "air-loading-bound",
  name: "how far the air can lower a plate's frequency",
  inputs: {
    density: woodDensity("density of the wood"),
    thickness: positive("m", "thickness"),
    waveNumber: positive("rad/m", "2 pi over the wavelength of the bending"),
    airDensity: leftOut(positive("kg/m3", "density of the air"), 1.204),
  },
  fields: {
    ratio: { meaning: "frequency in air over frequency in a vacuum, at the least", dimension: "1" },
    modulusRatio: { meaning: "modulus found in air over the true one, at the least", dimension: "1" },
  },
  source: sources.airLoading,
  run: ({ density, thickness, waveNumber, airDensity }) => {
    const ratio = airLoadingBound(density, thickness, waveNumber, airDensity);
    return { ratio, modulusRatio: ratio ** 2 };
  },
});
