// A view as plain HTML by the same components, so that a dated copy reads without script. Every text is escaped by the renderer.
import { renderToString } from "preact-render-to-string";
import type { Drawing, View } from "../core/base/index.ts";
import { ViewShown } from "./views/view-shown.tsx";

/** The HTML of a view, its picture as drawn (null where it has none). */
export const staticView = (view: View, drawing: Drawing | null): string =>
  renderToString(<ViewShown view={view} drawing={drawing} turn={null} whole={true} />);
