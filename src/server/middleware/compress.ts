import { promisify } from "node:util";
import { gzip } from "node:zlib";
import type { MiddlewareHandler } from "hono";

const packed = promisify(gzip);
const SMALL = 1024;

/** Packs text answers where the page accepts that; streams and what is packed already pass as they are. */
export const compress: MiddlewareHandler = async (context, next) => {
  await next();
  const { headers, status } = context.res;
  const accepts = (context.req.header("accept-encoding") ?? "").includes("gzip");
  if (
    !accepts ||
    headers.has("content-encoding") ||
    !(headers.get("content-type") ?? "").startsWith("application/json")
  )
    return;
  const body = new Uint8Array(await context.res.arrayBuffer());
  const small = body.length < SMALL;
  const kept = new Headers(headers);
  if (!small) kept.set("content-encoding", "gzip");
  context.res = new Response(small ? body : new Uint8Array(await packed(body)), { status, headers: kept });
};
