// The service as one function from request to answer: concerns in their order, then the table of routes, then the page's files.
import { Hono } from "hono";
import { serviceProblem } from "../core/base/index.ts";
import type { AppFile, AppFiles } from "./app-files.ts";
import { compress } from "./middleware/compress.ts";
import { hostCheck } from "./middleware/host-check.ts";
import { originCheck } from "./middleware/origin-check.ts";
import { securityHeaders } from "./middleware/security-headers.ts";
import type { StartSecrets } from "./middleware/token-check.ts";
import { tokenCheck } from "./middleware/token-check.ts";
import { refuse } from "./routes/request-parts.ts";
import { routeTable } from "./routes/route-table.ts";
import type { Workspace } from "./workspace/workspace.ts";

export type AppOptions = {
  readonly workspace: Workspace;
  readonly files: AppFiles;
  readonly port: number;
  readonly secrets: StartSecrets;
  /** Told of each fault of ours: its id and what happened. */
  readonly log: (id: string, failure: unknown) => void;
  /** Makes the id of a fault. */
  readonly faultId: () => string;
};

export type App = { readonly fetch: (request: Request, env?: object) => Response | Promise<Response> };

/** The app over a workspace. */
export function createApp({ workspace, files, port, secrets, log, faultId }: AppOptions): App {
  const app = new Hono();
  app.onError((failure) => {
    const id = faultId();
    log(id, failure);
    return refuse(500, serviceProblem("fault-of-ours", { id }));
  });
  app.use(securityHeaders, compress, hostCheck(port), originCheck, tokenCheck(port, secrets));
  const known = new Set<string>();
  for (const [key, route] of Object.entries(routeTable)) {
    const [method = "", path = ""] = key.split(" ");
    known.add(path);
    app.on(method, path, (context) => route(context.req.raw, workspace));
  }
  for (const path of known) app.all(path, () => refuse(405, serviceProblem("method-not-allowed", {})));
  app.all("*", (context) => {
    if (context.req.method !== "GET") return refuse(405, serviceProblem("method-not-allowed", {}));
    const file = files.get(new URL(context.req.url).pathname);
    return file === undefined
      ? refuse(404, serviceProblem("not-here", {}))
      : fileAnswer(file, context.req.header("accept-encoding") ?? "");
  });
  return { fetch: (request, env) => app.fetch(request, env) };
}

function fileAnswer(file: AppFile, accepts: string): Response {
  const gzip = accepts.includes("gzip");
  const headers = {
    "content-type": file.type,
    "cache-control": file.lasting ? "private, max-age=31536000, immutable" : "no-store",
  };
  return new Response(gzip ? file.gzip : file.bytes, {
    headers: gzip ? { ...headers, "content-encoding": "gzip" } : headers,
  });
}
