// What to draw, as data: core computes every number in it; the drawing library only draws.
import type { RowRef } from "./row-ref.ts";

/** `unit`: canonical code. A date axis counts days since 1970-01-01. `order`: the labels of a label axis, in the order they are drawn. */
export type PictureAxis = {
  readonly label: string;
  readonly unit: string;
  readonly kind: "number" | "label" | "date";
  readonly order?: readonly string[];
};

/** One measured point. `group` chooses its mark (shape and colour together). */
export type PicturePoint = {
  readonly x: number | string;
  readonly y: number | string;
  readonly xLow?: number;
  readonly xHigh?: number;
  readonly yLow?: number;
  readonly yHigh?: number;
  readonly group?: string;
  /** The words that name it: piece and values with units. */
  readonly label: string;
  readonly row?: RowRef;
};

export type PictureLayer =
  | { readonly kind: "points"; readonly points: readonly PicturePoint[] }
  | {
      readonly kind: "line";
      readonly group?: string;
      readonly words: string;
      readonly dashed?: boolean;
      readonly at: readonly { readonly x: number; readonly y: number }[];
    }
  | {
      readonly kind: "band";
      readonly group?: string;
      readonly words: string;
      readonly at: readonly { readonly x: number; readonly low: number; readonly high: number }[];
    }
  | {
      readonly kind: "intervals";
      readonly intervals: readonly {
        readonly label: string;
        readonly value: number;
        readonly low: number;
        readonly high: number;
      }[];
    }
  | { readonly kind: "level"; readonly axis: "x" | "y"; readonly value: number; readonly words: string };

/** A picture of a finding: axes, layers and the words for who cannot see it. */
export type Picture = {
  readonly title: string;
  /** Text alternative: what, how many, direction, interval, exceptions. */
  readonly description: string;
  readonly x: PictureAxis;
  readonly y: PictureAxis;
  readonly groups: readonly string[];
  readonly layers: readonly PictureLayer[];
};
