import type { Plate } from "./plate.ts";
import { type PlateStiffness, plateStiffness } from "./plate-stiffness.ts";

/** What multiplies each energy of a parity class to give squared angular frequencies: stiffness over areal mass, sides turned to 2. */
export function energyWeights(plate: Plate): PlateStiffness {
  const [along, across, coupling, twist] = plateStiffness(plate);
  const [x, y] = [(2 / plate.length) ** 2, (2 / plate.width) ** 2];
  const areal = plate.density * plate.thickness;
  return [(along * x * x) / areal, (across * y * y) / areal, (coupling * x * y) / areal, (twist * x * y) / areal];
}
