// A prediction: the records it rests on, and the ends of what to expect of the next instrument.
import type { Answer, Picture, PictureLayer } from "../base/index.ts";
import { scaleFactor } from "../units/index.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureOfRelation } from "./picture-of-relation.ts";

/** The points, with a level at the expected value and at each end of its interval, where they are in the unit of y. */
export function pictureOfPrediction(finding: Answer, columns: PictureColumns): Picture | undefined {
  const picture = pictureOfRelation(finding, columns);
  const expected = finding.estimate[0];
  if (!picture || !expected || scaleFactor(expected.unit) !== scaleFactor(picture.y.unit)) return picture;
  const level = (value: number, words: string): PictureLayer => ({ kind: "level", axis: "y", value, words });
  const percent = `${Math.round(expected.level * 100)} % interval`;
  return {
    ...picture,
    title: `${picture.y.label} to expect`,
    layers: [
      ...picture.layers,
      level(expected.value, expected.name),
      level(expected.low, `lower end of the ${percent}`),
      level(expected.high, `upper end of the ${percent}`),
    ],
  };
}
