// Headers on every answer, errors too: what the page may load, that nobody may frame it, and that nothing is guessed or kept.
import type { MiddlewareHandler } from "hono";

export const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; " +
  "worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'";

const HEADERS: Readonly<Record<string, string>> = {
  "content-security-policy": POLICY,
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
};

/** Sets the headers once the answer is there. */
export const securityHeaders: MiddlewareHandler = async (context, next) => {
  await next();
  for (const [name, value] of Object.entries(HEADERS)) context.res.headers.set(name, value);
  if (!context.res.headers.has("cache-control")) context.res.headers.set("cache-control", "no-store");
};
