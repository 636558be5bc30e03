import type { Caution } from "../../base/index.ts";
import { columnInWords } from "../column-in-words.ts";
import { commonCautions } from "../common-cautions.ts";
import type { SharedClusters } from "../shared-clusters.ts";
import { rootsOf } from "../trace-of-answer.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";

const FEW = 10;

/** Few records, records set aside, many questions, pieces that share something, and columns computed from one measurement. */
export function relationCautions(
  input: RelationInput,
  design: RelationDesign,
  shared: SharedClusters | null,
): readonly Caution[] {
  const cautions: Caution[] = [...commonCautions(design.sample, input.asked, FEW, shared)];
  for (const x of input.x) {
    const own = new Set(rootsOf(x));
    const common = rootsOf(input.y).filter((root) => own.has(root));
    if (common.length > 0)
      cautions.push({
        code: "shared-ancestor",
        facts: {
          columns: `${columnInWords(input.y)} and ${columnInWords(x)}`,
          ancestor: common.map((name) => columnInWords({ name })).join(", "),
        },
      });
  }
  return cautions;
}
