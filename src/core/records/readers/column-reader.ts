// The catalogue of column kinds, in the order in which they may claim a column.
import type { ColumnReader, ColumnSource } from "./column-source.ts";
import { rowsOf } from "./column-source.ts";
import { dateReader } from "./date-reader.ts";
import { gradeReader } from "./grade-reader.ts";
import { pitchReader } from "./pitch-reader.ts";
import { quantityReader } from "./quantity-reader.ts";
import { isDigitNames, isIdColumn, textReader } from "./text-reader.ts";
import { yesNoReader } from "./yes-no-reader.ts";

/** A new kind is a file and a line here. */
export const columnReaders: readonly ColumnReader[] = [
  gradeReader,
  pitchReader,
  yesNoReader,
  dateReader,
  quantityReader,
  textReader,
];
const SHARE = 0.6;

/** The reader of a column: what the maker says it is; a unit and one number make it quantities; names of pieces are text; else the first that fits 60 % of the cells. */
export function columnReader(source: ColumnSource): ColumnReader {
  const said = columnReaders.find(({ kind }) => kind === source.kind);
  if (said) return said;
  const counted = source.cells.filter((cell) => cell.special === null);
  const count = rowsOf(counted) + source.numerals.all;
  if (source.unit !== null && (count === 0 || quantityReader.fits(source, counted) > 0)) return quantityReader;
  if (isIdColumn(source) || isDigitNames(source)) return textReader;
  if (count === 0) return textReader;
  return columnReaders.find((reader) => reader.fits(source, counted) >= SHARE * count) ?? textReader;
}
