// Where the formulas of this room come from.
import type { Source } from "../base/index.ts";

export const sources = {
  definition: { citation: "by definition", basis: "derived" },
  beamTheory: {
    citation:
      "Euler–Bernoulli beam, uniform rectangular section; e.g. Rayleigh, The Theory of Sound, vol. 1, chapter 8",
    basis: "derived",
  },
  timoshenko: {
    citation: "first-order shear and rotary correction of the free beam, checked against the exact Timoshenko solution",
    basis: "derived",
  },
  timoshenkoExact: {
    citation: "Timoshenko, Phil. Mag. 41 (1921) 744-746; Huang, J. Appl. Mech. 28 (1961) 579-584",
    basis: "derived",
  },
  isotropicFactor: { citation: "ASTM E1876, factor T1 (isotropic materials only)", basis: "memory" },
  handbook: { citation: "Forest Products Laboratory, Wood Handbook (GTR-190, 2010), chapter 4", basis: "published" },
  handbookShrinkage: {
    citation:
      "Forest Products Laboratory, Wood Handbook (GTR-190, 2010), equations 4-7 and 4-9; average volumetric shrinkage 26.5 % times basic specific gravity",
    basis: "memory",
  },
  handbookProperty: {
    citation: "Forest Products Laboratory, Wood Handbook (GTR-190, 2010), equation 5-3",
    basis: "memory",
  },
  moistureTest: { citation: "ASTM D4442; ISO 3130 (oven-dry method)", basis: "published" },
  rod: { citation: "plane wave in a slender rod: c squared is E / density", basis: "derived" },
  resonance: {
    citation:
      "single lightly damped resonator; e.g. Fletcher and Rossing, The Physics of Musical Instruments, chapter 1",
    basis: "derived",
  },
  plate: {
    citation:
      "thin orthotropic plate, simply supported: closed form; e.g. Leissa, Vibration of Plates (NASA SP-160, 1969), chapter 9",
    basis: "derived",
  },
  ritzPlate: {
    citation:
      "thin orthotropic plate with free edges, Rayleigh–Ritz over Legendre polynomials; method: Leissa, J. Sound Vib. 31(3) (1973) 257-293",
    basis: "derived",
  },
  shearPlate: {
    citation: "first-order shear theory with rotary inertia: Mindlin, J. Appl. Mech. 18 (1951) 31-38, orthotropic",
    basis: "derived",
  },
  plateInverse: {
    citation: "three modes of a free plate: McIntyre and Woodhouse, Acta Metall. 36 (1988) 1397-1416",
    basis: "derived",
  },
  elasticity: {
    citation: "symmetric elastic constants; e.g. Lekhnitskii, Anisotropic Plates (1968)",
    basis: "derived",
  },
  airLoading: {
    citation: "added mass of an endless plate, density of air over wave number a face",
    basis: "derived",
  },
  equalRule: {
    citation: "plate of the same outline: bending stiffness goes as E h^3, mass as density times h",
    basis: "derived",
  },
  torsion: {
    citation:
      "Saint-Venant torsion of a rectangular bar; e.g. Timoshenko and Goodier, Theory of Elasticity, article 109",
    basis: "derived",
  },
  temperament: { citation: "ISO 16:1975, A4 = 440 Hz; equal temperament", basis: "standard" },
  spectrum: { citation: "discrete Fourier transform: bins lie sample rate over points apart", basis: "derived" },
  string: { citation: "ideal flexible string (Mersenne)", basis: "derived" },
  air: { citation: "331.3 m/s at 0 degrees Celsius, ideal gas", basis: "memory" },
  cavity: {
    citation:
      "Helmholtz resonator with flanged ends, 8/(3 pi) of the radius a side; Rayleigh, The Theory of Sound, vol. 2, chapter 16",
    basis: "memory",
  },
  twoPistons: { citation: "Christensen and Vistisen, J. Acoust. Soc. Am. 68 (1980) 758-766", basis: "memory" },
  practice: { citation: "common practice, no source", basis: "common-practice" },
} as const satisfies Readonly<Record<string, Source>>;
