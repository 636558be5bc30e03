// Draws a Picture. The only place that touches the drawing library; core has computed every number.
import type { Markish } from "@observablehq/plot";
import { areaY, dot, line, plot, ruleX, ruleY } from "@observablehq/plot";
import type { Drawing, Picture, PictureLayer, PicturePoint } from "../../core/base/index.ts";
import { drawingOfElement } from "./drawing-of-element.ts";
import { groupMarks } from "./group-marks.ts";
import { markupOfDrawing } from "./markup-of-drawing.ts";
import { leftMargin, pictureAxes, scaleOf } from "./picture-axes.ts";
import { pictureKey } from "./picture-key.ts";

type Position = (value: number | string | undefined) => number | string | Date | undefined;
type Sheet = { readonly picture: Picture; readonly x: Position; readonly y: Position };

const DAY = 86_400_000;
const position = (kind: string): Position =>
  kind === "date" ? (value) => (typeof value === "number" ? new Date(value * DAY) : value) : (value) => value;
const markOf = (picture: Picture, group: string | undefined) =>
  groupMarks(group === undefined ? 0 : picture.groups.indexOf(group));

/** In rows of a label, points that would lie on each other are dealt out over three lanes, in the order of their values. */
function lanes(picture: Picture, points: readonly PicturePoint[]) {
  if (picture.y.kind !== "label" || points.length < 2) return [{ dy: 0, points }];
  const sorted = [...points].sort((a, b) => Number(a.x) - Number(b.x));
  return [-14, -7, 0].map((dy, lane) => ({ dy, points: sorted.filter((_, at) => at % 3 === lane) }));
}

function pointMarks({ picture, x, y }: Sheet, points: readonly PicturePoint[]): readonly Markish[] {
  const names: readonly (string | undefined)[] = picture.groups.length === 0 ? [undefined] : picture.groups;
  // Rows of a label are too narrow for the uncertainty of every single point.
  const inBars =
    picture.y.kind === "label" ? [] : points.filter((point) => point.xLow !== undefined && point.xHigh !== undefined);
  const upBars = points.filter((point) => point.yLow !== undefined && point.yHigh !== undefined);
  const bar = { stroke: "var(--ink-quiet)", strokeWidth: 1, strokeOpacity: 0.6 } as const;
  return [
    ...(inBars.length
      ? [
          ruleY(inBars, {
            x1: (p: PicturePoint) => x(p.xLow),
            x2: (p: PicturePoint) => x(p.xHigh),
            y: (p: PicturePoint) => y(p.y),
            ...bar,
          }),
        ]
      : []),
    ...(upBars.length
      ? [
          ruleX(upBars, {
            y1: (p: PicturePoint) => y(p.yLow),
            y2: (p: PicturePoint) => y(p.yHigh),
            x: (p: PicturePoint) => x(p.x),
            ...bar,
          }),
        ]
      : []),
    ...names.flatMap((name) => {
      const mark = markOf(picture, name);
      const own = name === undefined ? points : points.filter((point) => point.group === name);
      return lanes(picture, own).flatMap(({ dy, points: laid }) =>
        laid.length === 0
          ? []
          : [
              dot(laid, {
                dy,
                x: (p: PicturePoint) => x(p.x),
                y: (p: PicturePoint) => y(p.y),
                symbol: mark.shape,
                stroke: mark.color,
                strokeWidth: 1.6,
                r: 4,
                fill: mark.color,
                fillOpacity: 0.35,
                title: "label",
              }),
            ],
      );
    }),
    ...(picture.groups.length && points.some((point) => point.group === undefined)
      ? [
          dot(
            points.filter((point) => point.group === undefined),
            {
              x: (p: PicturePoint) => x(p.x),
              y: (p: PicturePoint) => y(p.y),
              symbol: "plus",
              stroke: "var(--ink-quiet)",
              r: 4,
              title: "label",
            },
          ),
        ]
      : []),
  ];
}

type LayerOf<K extends PictureLayer["kind"]> = Extract<PictureLayer, { kind: K }>;
type At = { readonly x: number; readonly y: number };
type BandAt = { readonly x: number; readonly low: number; readonly high: number };
/** An interval lies below the points of its row, not over them. */
const BELOW = 12;
type Interval = LayerOf<"intervals">["intervals"][number];

/** Intervals lie along whichever axis holds numbers. */
function intervalMarks({ picture }: Sheet, layer: LayerOf<"intervals">): readonly Markish[] {
  const thick = { stroke: "currentColor", strokeWidth: 2.2 } as const;
  const middle = {
    symbol: "diamond",
    r: 5,
    fill: "var(--paper)",
    stroke: "currentColor",
    strokeWidth: 2,
    title: (i: Interval) => i.label,
  } as const;
  return picture.y.kind === "label"
    ? [
        ruleY(layer.intervals, { y: "label", x1: "low", x2: "high", dy: BELOW, ...thick }),
        dot(layer.intervals, { x: "value", y: "label", dy: BELOW, ...middle }),
      ]
    : [
        ruleX(layer.intervals, { x: "label", y1: "low", y2: "high", ...thick }),
        dot(layer.intervals, { x: "label", y: "value", ...middle }),
      ];
}

const layerMarks: { readonly [K in PictureLayer["kind"]]: (sheet: Sheet, layer: LayerOf<K>) => readonly Markish[] } = {
  points: (sheet, layer) => pointMarks(sheet, layer.points),
  line: ({ picture, x, y }, layer) => [
    line(layer.at, {
      x: (p: At) => x(p.x),
      y: (p: At) => y(p.y),
      stroke: markOf(picture, layer.group).color,
      strokeWidth: 2,
      ...(layer.dashed ? { strokeDasharray: "6 4" } : {}),
      ariaLabel: () => layer.words,
    }),
  ],
  band: ({ picture, x, y }, layer) => [
    areaY(layer.at, {
      x: (p: BandAt) => x(p.x),
      y1: (p: BandAt) => y(p.low),
      y2: (p: BandAt) => y(p.high),
      fill: markOf(picture, layer.group).color,
      fillOpacity: 0.14,
      ariaLabel: () => layer.words,
    }),
  ],
  intervals: intervalMarks,
  level: ({ x, y }, layer) => {
    const rule = { stroke: "currentColor", strokeDasharray: "3 3", strokeOpacity: 0.7, title: () => layer.words };
    return [layer.axis === "y" ? ruleY([y(layer.value)], rule) : ruleX([x(layer.value)], rule)];
  },
};

function labelsAlong(picture: Picture, axis: "x" | "y"): readonly string[] {
  const labels = picture.layers.flatMap((layer) => {
    if (layer.kind === "points") return layer.points.map((point) => String(point[axis]));
    return layer.kind === "intervals" ? layer.intervals.map((interval) => interval.label) : [];
  });
  return [...new Set(labels)];
}

const WIDTH = 640;
const HEIGHT = 400;
const ROW = 58;

/**
 * The picture as an SVG element made in the document handed in. Colours are roles of the page's style sheet, shapes differ by group,
 * every point carries its words. No style element, no id, nothing random: the same picture gives the same element.
 */
export function drawPicture(picture: Picture, document: Document): SVGSVGElement {
  const sheet: Sheet = { picture, x: position(picture.x.kind), y: position(picture.y.kind) };
  const [xLabels, yLabels] = [labelsAlong(picture, "x"), labelsAlong(picture, "y")];
  const marks = picture.layers.flatMap((layer) =>
    (layerMarks[layer.kind] as (sheet: Sheet, layer: PictureLayer) => readonly Markish[])(sheet, layer),
  );
  const key = pictureKey(picture, document, WIDTH);
  const svg = plot({
    document,
    className: "chart",
    width: WIDTH,
    height: (picture.y.kind === "label" ? Math.max(160, 70 + ROW * yLabels.length) : HEIGHT) + key.height,
    marginTop: 24 + key.height,
    marginBottom: 44,
    marginLeft: leftMargin(picture.y, yLabels),
    marginRight: 16,
    x: scaleOf(picture.x, xLabels),
    y: scaleOf(picture.y, yLabels),
    marks: [...pictureAxes(picture.x, picture.y), ...marks],
  }) as SVGSVGElement;
  for (const style of Array.from(svg.querySelectorAll("style"))) style.remove();
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", `${picture.title}. ${picture.description}`);
  if (key.element) svg.append(key.element);
  return svg;
}

/** The picture as plain data, for who builds it node by node. */
export const pictureDrawing = (picture: Picture, document: Document): Drawing =>
  drawingOfElement(drawPicture(picture, document));

/** The picture as text, for a saved file. */
export const pictureMarkup = (picture: Picture, document: Document): string =>
  markupOfDrawing(pictureDrawing(picture, document));
