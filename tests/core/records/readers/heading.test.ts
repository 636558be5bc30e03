import { expect, it } from "vitest";
import { heading } from "../../../../src/core/records/readers/heading.ts";

it.each([
  ["thickness (mm)", "thickness", "mm"],
  ["b [mm]", "b", "mm"],
  ["c, g", "c", "g"],
  ["d / Hz", "d", "Hz"],
  ["e_mm", "e", "mm"],
  ["f kg/m3", "f", "kg/m3"],
  ["wedge (°)", "wedge", "deg"],
  ["depth [[in_i]]", "depth", "[in_i]"],
  ["depth [in_i]", "depth", "[in_i]"],
  ["width  (bass) [mm]", "width (bass)", "mm"],
  ["thickness\n(bass side)", "thickness (bass side)", null],
  ["check in", "check in", null],
  ["depth, in", "depth", "[in_i]"],
  ["density kg/m³", "density", "kg/m3"],
  ["speed m/s", "speed m/s", null],
  ["speed / m/s", "speed", "m/s"],
  ["density_kg_m3", "density_kg_m3", null],
  ["mm", "mm", null],
  ["E (GPa)", "E", "GPa"],
])("takes the unit out of %j", (header, name, unit) => expect(heading(header)).toEqual({ name, unit }));
