import type { Cells, DescribedColumn } from "../records/index.ts";
import { codeAt, kindAt, unitAt, valueAt } from "../records/index.ts";
import type { Unit } from "../units/index.ts";
import { pitchFromText, sameDimension, toSi, unitFromCode, unitFromText } from "../units/index.ts";
import type { QuantityColumn } from "./column.ts";

/** Standard uncertainty of a value that lies anywhere within a half-width. Source: JCGM 100:2008 (GUM), 4.3.7. */
const OF_HALF_WIDTH = 1 / Math.sqrt(3);

/** A cell's unit, or null if the code means none that is known. */
export const unitOfCode = (code: string): Unit | null =>
  unitFromText(code) ?? (code === "1" ? unitFromCode("1") : null);

/** The column's unit: as the maker says, as the head says, else that of the first cell with one, else none. */
function columnUnit(cells: Cells, headUnit: string | null, said: DescribedColumn): Unit {
  let first: string | null = null;
  for (let row = 0; first === null && cells.unitPlaces !== null && row < cells.length; row++)
    if (kindAt(cells, row) === "quantity") first = unitAt(cells, row);
  for (const code of [said.unit, headUnit, first]) {
    const unit = code ? unitOfCode(code) : null;
    if (unit) return unit;
  }
  return unitFromCode("1");
}

/** The standard uncertainty that the maker says for every cell of the column, in SI; null if none. */
function saidUncertainty(said: DescribedColumn, unit: Unit): number | null {
  const { uncertainty } = said;
  if (uncertainty === undefined) return null;
  const written = typeof uncertainty === "string" ? uncertainty.trim().split(" ") : null;
  const value = typeof uncertainty === "string" ? Number(written?.[0] || Number.NaN) : uncertainty.value;
  const code = typeof uncertainty === "string" ? written?.slice(1).join(" ") : uncertainty.unit;
  const own = code ? unitOfCode(code) : unit;
  if (!own || !Number.isFinite(value) || value < 0 || !sameDimension(own.dimension, unit.dimension)) return null;
  return value * own.factor;
}

/** The unit of the cell at a row, `usual` where it has none of its own; null if it is of another dimension than the column's. Each is looked up once. */
function cellUnits({ units, unitPlaces }: Cells, usual: string, unit: Unit): (row: number) => Unit | null {
  const fitting = units.map((code) => {
    const own = unitOfCode(code ?? usual);
    return own && sameDimension(own.dimension, unit.dimension) ? own : null;
  });
  return (row) => fitting[unitPlaces === null ? 0 : (unitPlaces[row] ?? 0)] ?? null;
}

/**
 * Values and standard uncertainties of a quantity column, in SI. A cell's own unit converts it; a cell whose unit is of another dimension, or that
 * is no quantity, is missing. Uncertainty: the cell's own (half a range / sqrt 3), else what the maker says of the column, else 0; null if
 * no cell has any. `otherDimension` counts the cells set missing for their unit.
 */
export function quantityFromCells(cells: Cells, headUnit: string | null, said: DescribedColumn) {
  const unit = columnUnit(cells, headUnit, said);
  const every = saidUncertainty(said, unit);
  const values = new Float64Array(cells.length).fill(Number.NaN);
  const uncertainty = new Float64Array(cells.length).fill(Number.NaN);
  const unitOf = cellUnits(cells, headUnit ?? said.unit ?? "1", unit);
  const isFrequency = sameDimension(unit.dimension, unitFromCode("Hz").dimension);
  const { numbers, uncertainties } = cells;
  let otherDimension = 0;
  let hasUncertainty = every !== null && every > 0;
  for (let row = 0; row < cells.length; row++) {
    const kind = kindAt(cells, row);
    if (kind !== "quantity" && kind !== "pitch") continue;
    const written = numbers === null ? Number.NaN : (numbers[row] as number);
    if (Number.isNaN(written)) {
      const note = kind === "pitch" && isFrequency ? valueAt(cells, row) : null;
      const pitch = typeof note === "string" ? pitchFromText(note) : null;
      if (pitch) [values[row], uncertainty[row]] = [pitch.frequency, 0];
      continue;
    }
    if (kind !== "quantity") continue;
    const own = unitOf(row);
    if (!own) {
      otherDimension += 1;
      continue;
    }
    const value = toSi(written, own);
    if (!Number.isFinite(value)) continue;
    values[row] = value;
    const half = uncertainties === null ? Number.NaN : (uncertainties[row] as number);
    const spread = Number.isNaN(half)
      ? (every ?? 0)
      : half * own.factor * (codeAt(cells, row) === "range" ? OF_HALF_WIDTH : 1);
    uncertainty[row] = Number.isFinite(spread) ? spread : 0;
    if (spread > 0) hasUncertainty = true;
  }
  const shown: Pick<QuantityColumn, "values" | "uncertainty" | "unit" | "dimension"> = {
    values,
    uncertainty: hasUncertainty ? uncertainty : null,
    unit: unit.code,
    dimension: unit.dimension,
  };
  return { ...shown, otherDimension };
}
