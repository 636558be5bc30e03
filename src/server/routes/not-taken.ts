import { serviceProblem } from "../../core/base/index.ts";
import type { TakenIn } from "../workspace/take-in.ts";
import { diskProblem, refuse } from "./request-parts.ts";

/** The answer where files were not taken in. exists: what to say of a name that is not free. */
export function notTaken(
  outcome: Extract<TakenIn, { readonly taken: false }>,
  exists: "table-exists" | "notebook-exists",
): Response {
  if (outcome.because === "held") return refuse(423, serviceProblem("folder-held", { holder: outcome.holder }));
  return outcome.because === "exists"
    ? refuse(409, serviceProblem(exists, { file: outcome.file }))
    : refuse(507, diskProblem(outcome.file, outcome.error));
}
