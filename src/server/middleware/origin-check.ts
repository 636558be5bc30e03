import type { MiddlewareHandler } from "hono";
import { serviceProblem } from "../../core/base/index.ts";
import { refuse } from "../routes/request-parts.ts";

/** Refuses (403) what another site asks: an Origin that is not exactly ours, a Sec-Fetch-Site that is not `same-origin` or `none`. */
export const originCheck: MiddlewareHandler = async (context, next) => {
  const { origin, "sec-fetch-site": site } = context.req.header();
  const foreign = origin !== undefined && origin !== `http://${context.req.header("host")}`;
  if (foreign || (site !== undefined && site !== "same-origin" && site !== "none"))
    return refuse(403, serviceProblem("other-site", {}));
  return next();
};
