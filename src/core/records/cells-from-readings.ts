import { type Cells, cellKinds } from "./cells.ts";
import type { Reading } from "./reading.ts";

function placeIn<T>(list: T[], known: Map<T, number>, value: T): number {
  const place = known.get(value) ?? list.push(value) - 1;
  known.set(value, place);
  return place;
}

/** Readings packed. Every reading comes out again as it went in. */
export function cellsFromReadings(readings: readonly Reading[]): Cells {
  const { length } = readings;
  const [starts, ends, kinds] = [new Int32Array(length), new Int32Array(length), new Uint8Array(length)];
  const [numbers, uncertainties] = [
    new Float64Array(length).fill(Number.NaN),
    new Float64Array(length).fill(Number.NaN),
  ];
  const [unitPlaces, codePlaces, textPlaces] = [
    new Uint16Array(length),
    new Uint8Array(length),
    new Uint32Array(length),
  ];
  const units: (string | null)[] = [null];
  const [codes, texts]: [string[], string[]] = [[], []];
  const [knownUnits, knownCodes, knownTexts] = [new Map<string | null, number>([[null, 0]]), new Map(), new Map()];
  const parts: string[] = [];
  let end = 0;
  for (const [row, { raw, kind, value, unit, uncertainty, code }] of readings.entries()) {
    parts.push(raw);
    starts[row] = end;
    end += raw.length;
    ends[row] = end;
    kinds[row] = cellKinds.indexOf(kind);
    if (typeof value === "number") numbers[row] = value;
    if (typeof value === "string" && value !== raw.trim()) textPlaces[row] = placeIn(texts, knownTexts, value) + 1;
    if (uncertainty !== undefined) uncertainties[row] = uncertainty;
    if (unit !== null) unitPlaces[row] = placeIn(units, knownUnits, unit);
    if (code !== undefined) codePlaces[row] = placeIn(codes, knownCodes, code) + 1;
  }
  const some = (values: Float64Array) => (values.every(Number.isNaN) ? null : values);
  return {
    length,
    raw: { text: parts.join(""), starts, ends, apart: new Map() },
    kinds,
    numbers: some(numbers),
    uncertainties: some(uncertainties),
    unitPlaces: units.length > 1 ? unitPlaces : null,
    units,
    codePlaces: codes.length > 0 ? codePlaces : null,
    codes,
    textPlaces: texts.length > 0 ? textPlaces : null,
    texts,
  };
}
