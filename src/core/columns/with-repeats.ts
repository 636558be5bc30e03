// Columns that hold readings of one thing, and the column that is their mean.
import type { RepeatedReadings } from "../records/index.ts";
import { sameDimension } from "../units/index.ts";
import type { Contribution, QuantityColumn } from "./column.ts";
import { freeName } from "./column-name.ts";
import { columnNotes } from "./column-notes.ts";
import type { ColumnTable } from "./column-table.ts";
import { meanFormula, spreadSource } from "./mean-formula.ts";
import { meanOfReadings } from "./mean-of-readings.ts";

/**
 * The mean of some columns at each row, of the readings that are there. Its standard uncertainty: what the spread leaves unsure, and each reading's
 * own over their number, in squares (JCGM 100:2008, 4.2.3 and 5.1.2). short: rows that lack some readings and not all.
 */
function meanColumn(name: string, readings: readonly QuantityColumn[]): { column: QuantityColumn; short: number } {
  const [{ unit, dimension, values: first }] = readings as [QuantityColumn];
  const names = readings.map((reading) => reading.name);
  const formula = meanFormula(names);
  const values = new Float64Array(first.length);
  const scatter = new Float64Array(first.length);
  const uncertainty = new Float64Array(first.length);
  const own = readings.map(() => new Float64Array(first.length));
  let short = 0;
  for (let row = 0; row < first.length; row++) {
    const given = readings.map((reading) => reading.values[row] ?? Number.NaN);
    const { count, mean, standardError } = meanOfReadings(given);
    if (count > 0 && count < readings.length) short += 1;
    values[row] = mean;
    scatter[row] = standardError;
    let squares = standardError ** 2;
    for (const [k, reading] of readings.entries()) {
      const part = Number.isNaN(given[k]) ? 0 : (reading.uncertainty?.[row] ?? 0) / count;
      (own[k] as Float64Array)[row] = part;
      squares += part ** 2;
    }
    uncertainty[row] = count === 0 ? Number.NaN : Math.sqrt(squares);
  }
  const contributions = new Map<string, Contribution>([[spreadSource(formula), { values: scatter, shared: false }]]);
  for (const [k, reading] of readings.entries())
    if (reading.uncertainty) contributions.set(reading.name, { values: own[k] as Float64Array, shared: false });
  const column: QuantityColumn = {
    name,
    header: name,
    origin: { from: "formula", formula, parents: names, roots: [...names].sort(), readings: true },
    warnings: 0,
    kind: "quantity",
    values,
    uncertainty,
    unit,
    dimension,
    contributions,
  };
  return { column, short };
}

/** Quantities of one dimension, two or more; null if the columns are not that. */
function usable(table: ColumnTable, names: readonly string[]): readonly QuantityColumn[] | null {
  const found = names.flatMap((name) => table.columns.get(name) ?? []);
  const readings = found.filter((column): column is QuantityColumn => column.kind === "quantity");
  const [first] = readings;
  const alike = first && readings.every(({ dimension }) => sameDimension(dimension, first.dimension));
  return alike && readings.length > 1 && readings.length === names.length ? readings : null;
}

/** The table with one more column for each set of readings. repeats: names, and columns as the table calls them. */
export function withRepeats(table: ColumnTable, repeats: readonly RepeatedReadings[]): ColumnTable {
  if (repeats.length === 0) return table;
  const columns = new Map(table.columns);
  const notes = [...table.notes];
  for (const { name: wanted, columns: names } of repeats) {
    const readings = usable(table, names);
    if (!readings) {
      notes.push(columnNotes["readings-unusable"]({ name: wanted, columns: names.join(", ") }));
      continue;
    }
    const name = freeName(wanted, columns);
    if (name !== wanted) notes.push(columnNotes["name-repeats"]({ header: wanted, name }));
    const { column, short } = meanColumn(name, readings);
    columns.set(name, column);
    if (short > 0) notes.push(columnNotes["readings-missing"]({ name, count: short, most: readings.length }));
  }
  return { ...table, columns, notes };
}
