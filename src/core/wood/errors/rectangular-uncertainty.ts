import { declined, type Method, succeeded } from "../../base/index.ts";
import { HALF_WIDTHS } from "../../numerics/index.ts";

const isShape = (shape: unknown): shape is keyof typeof HALF_WIDTHS =>
  typeof shape === "string" && Object.hasOwn(HALF_WIDTHS, shape);

/** Standard uncertainty of a value that is only known to lie within limits: half width over sqrt 3 where every place is as likely. */
export const rectangularUncertainty: Method = {
  id: "uncertainty-from-limits",
  name: "standard uncertainty from limits",
  answers: "quantity",
  needs: {},
  inputs: {
    halfWidth: { kind: "quantity", meaning: "half the distance between the limits; half a step of a display" },
    shape: {
      kind: "choice",
      choices: ["rectangular", "triangular", "u-shaped"],
      optional: true,
      meaning: "which places are likely; rectangular if not given",
    },
  },
  fields: { standard: { meaning: "standard uncertainty, in the unit of the half width" } },
  source: { citation: "JCGM 100:2008, 4.3.7 and 4.3.9; JCGM 101:2008, 6.4", basis: "published" },
  run: ({ halfWidth, shape = "rectangular" }) => {
    if (typeof halfWidth !== "number" || !Number.isFinite(halfWidth))
      return declined("out-of-domain", { name: "halfWidth", needed: "a number" });
    if (halfWidth < 0) return declined("negative-uncertainty", { name: "halfWidth" });
    if (!isShape(shape))
      return declined("out-of-domain", { name: "shape", needed: "rectangular, triangular or u-shaped" });
    return succeeded({ standard: halfWidth / HALF_WIDTHS[shape] });
  },
};
