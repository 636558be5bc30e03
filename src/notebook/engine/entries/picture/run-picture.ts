import type { Picture } from "../../../../core/base/index.ts";
import { picturePoints } from "../../../../core/pictures/index.ts";
import { type Computed, computed, failed, type Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { amountsNamed, columnFrom, maskFrom } from "../../evaluated.ts";
import { expressionText } from "../../expression-text.ts";
import { labelOf } from "../../label-of.ts";
import type { PictureSpec } from "./picture-spec.ts";

/** One column against another, a mark for each group. */
export function runPicture(spec: PictureSpec, inputs: Inputs): Computed<Picture> {
  const slice = inputs.get(cells.slice(spec.key));
  if (!slice.ok) return failed();
  const amounts = amountsNamed(spec.amounts, spec.y, inputs);
  if (!amounts.ok) return amounts;
  const around = { ...slice.value, amounts: amounts.value };
  const column = (expression: PictureSpec["y"]) =>
    columnFrom(expression, expressionText(expression), expressionText(expression), around);
  const [y, x, by, mask] = [
    column(spec.y),
    column(spec.x),
    spec.by ? column(spec.by) : null,
    spec.where ? maskFrom(spec.where, around) : null,
  ];
  if (!y.ok) return y;
  if (!x.ok) return x;
  if (by && !by.ok) return by;
  if (mask && !mask.ok) return mask;
  return computed(
    picturePoints({
      table: slice.value.table,
      y: y.value,
      x: x.value,
      by: by ? labelOf(by.value) : null,
      mask: mask?.value ?? null,
    }),
  );
}
