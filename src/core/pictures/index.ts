export { axisWords } from "./axis-words.ts";
export type { PictureColumns } from "./picture-columns.ts";
export { pictureOf } from "./picture-of.ts";
export { picturePoints } from "./picture-points.ts";
