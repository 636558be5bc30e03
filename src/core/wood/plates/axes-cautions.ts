import type { Caution } from "../../base/index.ts";

/** The caution of a plate that is stiffer across the grain than along it, which no wood is: its axes are swapped. Moduli in Pa. */
export const axesCautions = (along: number, across: number): readonly Caution[] =>
  across > along
    ? [{ code: "axes-doubtful", facts: { ratio: Number((across / along).toPrecision(3)).toString() } }]
    : [];
