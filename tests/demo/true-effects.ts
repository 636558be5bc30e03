// What is true in the invented shop of notebooks/: every number that the records are made from. Nothing else decides what they show.

export type TrueSpecies = {
  readonly name: string;
  /** Boards bought, instruments finished. */
  readonly boards: number;
  readonly instruments: number;
  readonly trees: number;
  /** Mean Young's modulus along the grain (Pa) and density (kg/m3). */
  readonly youngsModulus: number;
  readonly density: number;
  /** Thickness (m) at which this maker stops when the top has the mean modulus of its species. Stiffer species are left thicker: the confounding. */
  readonly thickness: number;
  /** Seconds that the open third string rings. */
  readonly sustain: number;
  /** Added to the loudness out of five. */
  readonly loudness: number;
  readonly words: readonly string[];
};

export const trueEffects = {
  seed: 20190301,
  species: [
    {
      name: "spruce",
      boards: 33,
      instruments: 19,
      trees: 9,
      youngsModulus: 11.8e9,
      density: 432,
      thickness: 2.66e-3,
      sustain: 3.5,
      loudness: 3.2,
      words: ["bright", "clear", "slow to open", "glassy trebles", "even"],
    },
    {
      name: "cedar",
      boards: 24,
      instruments: 14,
      trees: 7,
      youngsModulus: 7.7e9,
      density: 352,
      thickness: 2.24e-3,
      sustain: 2.9,
      loudness: 3.9,
      words: ["warm", "dark", "quick", "round basses", "open from the first day"],
    },
    {
      name: "redwood",
      boards: 13,
      instruments: 7,
      trees: 4,
      youngsModulus: 9.3e9,
      density: 392,
      thickness: 2.45e-3,
      sustain: 3.2,
      loudness: 3.5,
      words: ["warm", "clear", "crisp", "even"],
    },
  ] as readonly TrueSpecies[],

  /** Within a species, ln(final thickness) falls by this for each unit of ln(modulus): equal bending stiffness. */
  thicknessExponent: -1 / 3,
  /** Scatter of ln(final thickness) that nothing explains. */
  thicknessScatter: 0.022,

  /** Scatter of ln(modulus) from tree to tree and from piece to piece of one tree. */
  treeScatter: 0.075,
  pieceScatter: 0.075,
  /** ln(density) rises by this for each unit of ln(modulus), and scatters besides. */
  densityWithModulus: 0.35,
  densityScatter: 0.03,

  /** Thicker tops rang longer until the bracing changed, and ring shorter since (s per m). The rule stated on bracingChanged is broken. */
  bracingChanged: "2023-03-01",
  sustainBefore: 1900,
  sustainSince: -1700,
  sustainScatter: 0.09,

  /** How exact the shop measures: standard deviations. */
  calliper: 0.02e-3,
  rule: 0.4e-3,
  tapFrequency: 0.004,
  /** The balance shows this much more than there is (kg, and as a share), until it was set again; the calliper this much less (m). */
  balanceOffset: 0.0004,
  balanceShare: 0.002,
  balanceScatter: 0.0001,
  balanceSet: "2024-02-10",
  calliperOffset: -0.03e-3,
} as const;
