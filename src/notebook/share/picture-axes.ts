// Axes of a drawn picture: ticks are written by us, in the same way wherever the picture is drawn.
import { axisX, axisY } from "@observablehq/plot";
import type { PictureAxis } from "../../core/base/index.ts";
import { axisWords } from "../../core/pictures/index.ts";

/** A tick's number: no grouping, a true minus, no stray digits of binary fractions. */
const tickNumber = (value: unknown) => {
  const number = Number(value);
  const short = Number(number.toPrecision(12));
  return String(Object.is(short, -0) ? 0 : short).replace("-", "−");
};
const tickDate = (value: unknown) => (value instanceof Date ? value.toISOString().slice(0, 10) : String(value));
const MOST_LETTERS = 22;
const tickLabel = (value: unknown) => {
  const text = String(value);
  return text.length <= MOST_LETTERS ? text : `${text.slice(0, MOST_LETTERS - 1)}…`;
};
const ticks = { number: tickNumber, date: tickDate, label: tickLabel } as const;

const TICKS = { number: 6, date: 4 } as const;

/** The two axes as marks. Labels stand at the end of their axis, in ink. */
export const pictureAxes = (x: PictureAxis, y: PictureAxis) => [
  axisX({
    label: axisWords(x),
    labelArrow: "none",
    labelAnchor: "center",
    tickFormat: ticks[x.kind],
    ...(x.kind === "label" ? {} : { ticks: TICKS[x.kind] }),
    tickSize: 4,
  }),
  axisY({
    // Names down the side say what they are; a word beside them would stand in their way.
    label: y.kind === "label" ? null : axisWords(y),
    labelArrow: "none",
    tickFormat: ticks[y.kind],
    ...(y.kind === "label" ? {} : { ticks: TICKS[y.kind] }),
    tickSize: 4,
  }),
];

/** A scale for an axis: labels keep their order; dates are days since 1970 turned into instants by the marks. */
export const scaleOf = (axis: PictureAxis, labels: readonly string[]) =>
  axis.kind === "label"
    ? ({
        type: "point",
        domain: axis.order?.filter((label) => labels.includes(label)) ?? [...labels],
        padding: 0.7,
      } as const)
    : ({ type: axis.kind === "date" ? "utc" : "linear", nice: true, inset: 8 } as const);

/** Width that labels down the left need, in pixels. */
export const leftMargin = (axis: PictureAxis, labels: readonly string[]): number =>
  axis.kind === "label"
    ? 24 +
      7 *
        Math.min(
          MOST_LETTERS,
          labels.reduce((most, label) => Math.max(most, label.length), 0),
        )
    : 64;
