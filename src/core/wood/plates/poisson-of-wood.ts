/**
 * Poisson ratio nu_LR of woods at about 12 % moisture; half a tenth more or less moves E by 0.3-0.6 %.
 * Source: Forest Products Laboratory, Wood Handbook (1999, 2010), Table 5-2 (sitka-spruce, maple and walnut read second-hand, the others from memory).
 */
export const poissonOfWood: Readonly<Record<string, number>> = {
  "sitka-spruce": 0.372,
  "engelmann-spruce": 0.422,
  "western-red-cedar": 0.378,
  "sugar-maple": 0.424,
  "black-walnut": 0.495,
  "honduras-mahogany": 0.314,
};
