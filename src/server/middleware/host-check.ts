// A name that merely resolves to this machine is another site: only the exact host names with the exact port are ours.
import type { MiddlewareHandler } from "hono";
import { serviceProblem } from "../../core/base/index.ts";
import { refuse } from "../routes/request-parts.ts";

type Raw = { readonly incoming?: { readonly rawHeaders: readonly string[] } } | undefined;

/** Refuses (421) any other Host, a second one, and another place in the request line. */
export const hostCheck = (port: number): MiddlewareHandler => {
  const ours = new Set([`127.0.0.1:${port}`, `localhost:${port}`]);
  return async (context, next) => {
    const host = context.req.header("host") ?? "";
    const hosts = ((context.env as Raw)?.incoming?.rawHeaders ?? []).filter(
      (name, i) => i % 2 === 0 && name.toLowerCase() === "host",
    );
    if (!ours.has(host) || hosts.length > 1 || new URL(context.req.url).host !== host)
      return refuse(421, serviceProblem("other-host", { port }));
    return next();
  };
};
