import type { Caution, Method, MethodInputs, Outcome } from "../base/index.ts";
import { declined, succeeded } from "../base/index.ts";
import { compensatedSum, mean, standardDeviation } from "../numerics/index.ts";
import { density } from "./density.ts";
import { densityCautions } from "./density-cautions.ts";
import { percentInWords } from "./percent-in-words.ts";
import { sources } from "./sources.ts";
import { positive } from "./wood-method.ts";

/** By how much the mean of the cubes lies above the cube of the mean: what a bending stiffness from the mean thickness misses. All > 0. */
export function cubeExcess(thicknesses: Float64Array): number {
  const middle = mean(thicknesses);
  return compensatedSum(thicknesses.map((h) => (h / middle) ** 3)) / thicknesses.length - 1;
}

/** Scatter of the readings, relative to their mean, from which the mean of the cubes is worth a word. */
const SCATTER = 0.03;

const inputs = {
  mass: positive("kg", "mass of the piece"),
  length: positive("m", "length along the grain"),
  width: positive("m", "width across the grain"),
  thicknesses: { kind: "quantities", dimension: "m", meaning: "readings of the thickness; missing ones are left out" },
} as const satisfies Method["inputs"];

type Piece = {
  readonly mass: number;
  readonly length: number;
  readonly width: number;
  readonly readings: Float64Array;
};

function pieceFrom(given: MethodInputs): Outcome<Piece> {
  const { thicknesses } = given;
  const read: Record<string, number> = {};
  for (const name of ["mass", "length", "width"] as const) {
    const value = given[name];
    if (typeof value !== "number" || !(value > 0) || !Number.isFinite(value))
      return declined("out-of-domain", { name: `${name} (${inputs[name].meaning})`, needed: "a value above 0" });
    read[name] = value;
  }
  const list: readonly unknown[] = Array.isArray(thicknesses) ? thicknesses : [thicknesses];
  const readings = list.filter((value): value is number => typeof value === "number" && !Number.isNaN(value));
  if (readings.length === 0) return declined("too-few-records", { have: 0, need: 1 });
  if (readings.some((value) => !(value > 0) || !Number.isFinite(value)))
    return declined("out-of-domain", { name: "thicknesses (readings of the thickness)", needed: "values above 0" });
  const { mass = 0, length = 0, width = 0 } = read;
  return succeeded({ mass, length, width, readings: Float64Array.from(readings) });
}

function run(given: MethodInputs): ReturnType<Method["run"]> {
  const piece = pieceFrom(given);
  if (!piece.ok) return piece;
  const { mass, length, width, readings } = piece.value;
  const thickness = mean(readings);
  const found = density(mass, length, width, thickness);
  if (!Number.isFinite(found)) return declined("not-finite", { name: "density" });
  return succeeded({
    density: found,
    thicknessMean: thickness,
    thicknessDeviation: readings.length > 1 ? standardDeviation(readings) : null,
    cubeExcess: cubeExcess(readings),
    readings: readings.length,
  });
}

function cautions(_: MethodInputs, fields: Readonly<Record<string, unknown>>): readonly Caution[] {
  const found = Number(fields.density);
  const spread = Number(fields.thicknessDeviation ?? 0) / Number(fields.thicknessMean);
  const scattered: Caution = {
    code: "thickness-scatters",
    facts: { spread: percentInWords(spread), rise: percentInWords(Number(fields.cubeExcess)) },
  };
  return [...densityCautions(found), ...(spread >= SCATTER ? [scattered] : [])];
}

/** Density from several thickness readings: their mean first, then mass / (length width mean thickness). Standard deviation with n - 1. */
export const densityOfReadings: Method = {
  id: "density-of-readings",
  name: "density from several thickness readings",
  answers: "quantity",
  needs: { rows: 1 },
  inputs,
  fields: {
    density: { meaning: "density", dimension: "kg/m3" },
    thicknessMean: { meaning: "mean of the readings", dimension: "m" },
    thicknessDeviation: { meaning: "their standard deviation, n - 1; absent for a single reading", dimension: "m" },
    cubeExcess: { meaning: "mean of the cubes over the cube of the mean, less 1", dimension: "1" },
    readings: { meaning: "readings used", dimension: "1" },
  },
  source: sources.definition,
  run,
  cautions,
};
