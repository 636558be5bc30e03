// The printed address carries the start token once; it is exchanged for a cookie and taken out of the address bar.
import { createHash, timingSafeEqual } from "node:crypto";
import type { MiddlewareHandler } from "hono";
import { serviceProblem } from "../../core/base/index.ts";
import { refuse } from "../routes/request-parts.ts";

/** Secrets of one start: the token of the printed address and the worth of the cookie. */
export type StartSecrets = { readonly token: string; readonly cookie: string };

const hash = (text: string) => createHash("sha256").update(text).digest();
/** Whether two texts are equal, in a time that does not tell where they differ. */
export const sameSecret = (a: string, b: string): boolean => timingSafeEqual(hash(a), hash(b));

/** Exchanges `/?token=…` for the cookie (303), and refuses data (401) to whoever has none. */
export const tokenCheck = (port: number, secrets: StartSecrets): MiddlewareHandler => {
  const name = `thumbrule-${port}`;
  return async (context, next) => {
    const url = new URL(context.req.url);
    const token = url.searchParams.get("token");
    if (token !== null && url.pathname === "/" && context.req.method === "GET") {
      if (!sameSecret(token, secrets.token)) return refuse(403, serviceProblem("token-wrong", {}));
      const cookie = `${name}=${secrets.cookie}; HttpOnly; SameSite=Strict; Path=/`;
      return new Response(null, { status: 303, headers: { location: "/", "set-cookie": cookie } });
    }
    if (!url.pathname.startsWith("/api")) return next();
    const given = (context.req.header("cookie") ?? "")
      .split(";")
      .map((pair) => pair.trim())
      .filter((pair) => pair.startsWith(`${name}=`));
    if (given.length !== 1 || !sameSecret(given[0]?.slice(name.length + 1) ?? "", secrets.cookie))
      return refuse(401, serviceProblem("token-missing", {}));
    return next();
  };
};
