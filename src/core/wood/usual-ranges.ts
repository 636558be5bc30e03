/** Where a quantity lies as a rule, both ends included, in coherent SI. */
export type UsualRange = readonly [low: number, high: number];

/**
 * Ranges wide enough for any wood and instrument; what lies outside is most likely a slip of units or of the decimal point.
 * Density from balsa (160 kg/m3) to cell walls (1500); moduli from balsa across the grain to the stiffest woods along it; sound speed likewise.
 * Quality below 5 is no light damping any more, which the formulas of loss take for granted. Air: what the sorption data behind the Wood Handbook's
 * table 4-2 span. Source: Wood Handbook (GTR-282), chapters 4 and 5; remembered.
 */
export const usualRanges = {
  density: [100, 1400],
  modulus: [5e7, 4e10],
  soundSpeed: [300, 8000],
  radiationRatio: [0.5, 60],
  quality: [5, 5000],
  moistureFound: [0, 3],
  moistureOfProperty: [0.03, 3],
  dryOverGreen: [1, 3],
  sorptionTemperature: [271, 406],
  sorptionHumidity: [0, 0.95],
  airTemperature: [240, 325],
  slendernessFirstOrder: [0, 0.08],
  stringTension: [1, 2000],
  stringDiameter: [1e-4, 5e-3],
  boxVolume: [1e-4, 0.5],
  soundHole: [2e-3, 0.2],
  plateThickness: [3e-4, 0.03],
  relativeUncertainty: [0, 0.3],
} as const satisfies Readonly<Record<string, UsualRange>>;
