// Twenty plates by three-dimensional finite elements (source in the file), against both models of a plate.
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { type Plate, plateModes, plateModesWithShear, type ThicknessShear } from "../../../../src/core/wood/index.ts";

type Elements = Readonly<Record<"twist" | "long" | "cross", number>>;
const file = new URL("../../../reference/physics/fe-plates.json", import.meta.url);
const { columns, plates } = JSON.parse(readFileSync(file, "utf8")) as {
  readonly columns: readonly string[];
  readonly plates: readonly (readonly (string | number)[])[];
};
const read = plates.map((row) => {
  const of = (column: string) => Number(row[columns.indexOf(column)]);
  const plate: Plate = {
    length: of("length_m"),
    width: of("width_m"),
    thickness: of("thickness_m"),
    density: of("density_kg_m3"),
    along: of("E_L_Pa"),
    across: of("E_R_Pa"),
    shear: of("G_LR_Pa"),
    poisson: of("nu_LR"),
  };
  const through: ThicknessShear = { shearAlong: of("G_LT_Pa"), shearAcross: of("G_RT_Pa"), coefficient: 5 / 6 };
  const elements: Elements = { twist: of("twist_Hz"), long: of("long1_Hz"), cross: of("cross1_Hz") };
  return { name: String(row[0]), plate, through, elements };
});
/** Percent above the finite elements. */
const off = (found: Elements, elements: Elements) => ({
  twist: 100 * (found.twist / elements.twist - 1),
  long: 100 * (found.long / elements.long - 1),
  cross: 100 * (found.cross / elements.cross - 1),
});

it.each(read)("the thin plate is above the elements of $name, little along and more across", ({ plate, elements }) => {
  const { twist, long, cross } = off(plateModes(plate), elements);
  for (const percent of [twist, long, cross]) expect(percent).toBeGreaterThan(0);
  expect(long).toBeLessThan(0.25);
  expect(twist).toBeLessThan(2.1);
  expect(cross).toBeLessThan(3.5);
});

it.each(read)("with shear through the thickness the elements of $name are met", ({ plate, through, elements }) => {
  const { twist, long, cross } = off(plateModesWithShear(plate, through, 3, 14), elements);
  expect(Math.abs(long)).toBeLessThan(0.1);
  expect(Math.abs(twist)).toBeLessThan(0.6);
  // Where wood is extremely soft in rolling shear (E_R/G_RT above 80; spruce has 20-30) it lies up to 0.8 % below: see the next test, and thick-bars.test.ts,
  // where elasticity without these elements stays with 5/6.
  expect(Math.abs(cross)).toBeLessThan(plate.across > 80 * through.shearAcross ? 0.8 : 0.6);
});

it("they are met better yet if the elements, a layer thick, carry shear evenly over the section (k = 1)", () => {
  for (const { plate, through, elements } of read) {
    const { twist, long, cross } = off(plateModesWithShear(plate, { ...through, coefficient: 1 }, 3, 14), elements);
    expect(Math.abs(long)).toBeLessThan(0.03);
    expect(Math.abs(twist)).toBeLessThan(0.4);
    expect(Math.abs(cross)).toBeLessThan(0.35);
  }
});
