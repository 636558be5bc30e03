import type { Picture, View } from "../../core/base/index.ts";

/** The picture of a view; undefined where it has none. */
export function pictureInView(view: View): Picture | undefined {
  if (view.kind === "picture") return view.picture;
  return view.kind === "answer" && view.finding.kind !== "refused" ? view.finding.picture : undefined;
}
