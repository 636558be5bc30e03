// A picture ready to be made.
import type { Expression } from "../../../../core/formula/index.ts";

export type PictureSpec = {
  readonly key: string;
  readonly y: Expression;
  readonly x: Expression;
  readonly by: Expression | null;
  readonly where: Expression | null;
  readonly amounts: readonly string[];
};
