// A rig check: how far each reading is off, against the reference value, with the line of its bias and the repeatability.
import type { Answer, Picture, PictureLayer, PicturePoint } from "../base/index.ts";
import { amountInWords, scaleFactor } from "../units/index.ts";
import { fittedLine } from "./fitted-line.ts";
import { usedIndices } from "./measured-points.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureDescription } from "./picture-description.ts";
import { pointsLayer } from "./points-layer.ts";
import { shownValues } from "./shown-values.ts";

function lineLayers(finding: Answer, points: readonly PicturePoint[]): readonly PictureLayer[] {
  const slope = finding.estimate.find((estimate) => estimate.name.startsWith("slope"));
  const [x, y] = [points.map((point) => Number(point.x)), points.map((point) => Number(point.y))];
  const [line] = slope && new Set(x).size > 1 ? fittedLine([{ x, y }], slope, false) : [];
  if (!line) return [];
  return [
    { kind: "band", words: "95 % interval of the bias", at: line.band },
    { kind: "line", words: "bias", at: line.at },
  ];
}

/** Errors and references in the unit of the reading; a dashed level at no error, and one either side at twice the repeatability. */
export function pictureOfRig(finding: Answer, columns: PictureColumns): Picture | undefined {
  const { y: reading, x: reference, table } = columns;
  if (!reference || reading.kind !== "quantity" || reference.kind !== "quantity") return undefined;
  const [read, known] = [shownValues(reading), shownValues(reference)];
  const toReading = scaleFactor(reference.unit) / scaleFactor(reading.unit);
  const points = usedIndices(table, finding.rows.used).flatMap((index): readonly PicturePoint[] => {
    const [readAt, knownAt, row] = [read.at(index), known.at(index), table.rows[index]];
    if (typeof readAt !== "number" || typeof knownAt !== "number" || row === undefined) return [];
    const error = readAt - knownAt * toReading;
    return [
      {
        x: knownAt * toReading,
        y: error,
        label: `${row.piece}: reads ${amountInWords(readAt, null, reading.unit)} for ${amountInWords(knownAt, null, reference.unit)}`,
        row,
      },
    ];
  });
  const x = { label: "reference", unit: reading.unit, kind: "number" } as const;
  const y = { label: "reading minus reference", unit: reading.unit, kind: "number" } as const;
  const bias = finding.estimate.find((estimate) => estimate.name.startsWith("bias"))?.value;
  const repeatability = finding.estimate.find((estimate) => estimate.name.startsWith("repeatability"))?.value;
  const limits =
    bias === undefined || repeatability === undefined ? [] : [bias - 2 * repeatability, bias + 2 * repeatability];
  return {
    title: "reading minus reference",
    description: pictureDescription(finding, points, [], x, y),
    x,
    y,
    groups: [],
    layers: [
      ...lineLayers(finding, points),
      { kind: "level", axis: "y", value: 0, words: "no error" },
      ...limits.map(
        (value): PictureLayer => ({
          kind: "level",
          axis: "y",
          value,
          words: "bias, twice the repeatability either way",
        }),
      ),
      pointsLayer(points),
    ],
  };
}
