// What several routes read from a request: its last names, and a JSON body of a stated shape within its limit.
import type { ServiceProblem, ServiceProblemCode } from "../../core/base/index.ts";
import { serviceProblem } from "../../core/base/index.ts";

export type RequestParts = Readonly<Record<string, unknown>>;

/** A refusal as JSON: `{ problems: [{ code, sentence }] }` beside whatever else the caller should have. */
export const refuse = (status: number, problem: ServiceProblem, more: RequestParts = {}): Response =>
  Response.json({ problems: [problem], ...more }, { status });

/** The `count` last parts of the address, each decoded once; null when one cannot be decoded. */
export function lastNames(request: Request, count: number): readonly string[] | null {
  try {
    return new URL(request.url).pathname.split("/").slice(-count).map(decodeURIComponent);
  } catch {
    return null;
  }
}

/** What each key of a body must be. A key that is not named here is refused. */
export type Shape = Readonly<Record<string, (value: unknown) => boolean>>;

type Body = { readonly ok: true; readonly value: RequestParts } | { readonly ok: false; readonly answer: Response };

/** The JSON body of a request, checked. */
export async function jsonBody(request: Request, shape: Shape, limit: number): Promise<Body> {
  const fail = (status: number, problem: ServiceProblem): Body => ({ ok: false, answer: refuse(status, problem) });
  const wrong = (key: string) => fail(422, serviceProblem("wrong-shape", { key }));
  const type = (request.headers.get("content-type") ?? "").toLowerCase().replaceAll(" ", "");
  if (type !== "application/json" && type !== "application/json;charset=utf-8")
    return fail(415, serviceProblem("not-json", {}));
  const bytes = await boundedBytes(request, limit).catch(() => "broken-off" as const);
  if (bytes === "broken-off") return fail(400, serviceProblem("not-json", {}));
  if (bytes === null) return fail(413, serviceProblem("body-too-large", { limit: `${limit} bytes` }));
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return fail(400, serviceProblem("not-json", {}));
  }
  if (typeof value !== "object" || value === null || Array.isArray(value)) return wrong("an object");
  for (const key of Object.keys(value)) if (!Object.hasOwn(shape, key)) return wrong(key.slice(0, 40));
  for (const [key, fits] of Object.entries(shape)) if (!fits((value as RequestParts)[key])) return wrong(key);
  return { ok: true, value: value as RequestParts };
}

/** Bytes of the body, or null as soon as more than `limit` have arrived or were announced. */
async function boundedBytes(request: Request, limit: number): Promise<Uint8Array | null> {
  if (Number(request.headers.get("content-length") ?? 0) > limit) return null;
  const chunks: Uint8Array[] = [];
  let size = 0;
  if (request.body)
    for await (const chunk of request.body) {
      size += chunk.length;
      if (size > limit) return null;
      chunks.push(chunk);
    }
  return new Uint8Array(Buffer.concat(chunks));
}

/** Names of problems by the disk's own codes. */
const DISK: Readonly<Record<string, ServiceProblemCode>> = {
  ENOSPC: "disk-full",
  EDQUOT: "disk-full",
  EACCES: "not-permitted",
  EPERM: "not-permitted",
  EROFS: "not-permitted",
  ENAMETOOLONG: "name-too-long",
  ENOENT: "folder-gone",
  ENOTDIR: "folder-gone",
};

/** The problem that a failed save is reported as. */
export function diskProblem(file: string, error: NodeJS.ErrnoException): ServiceProblem {
  const code = DISK[error.code ?? ""];
  return code === undefined
    ? serviceProblem("not-saved", { file, reason: error.code ?? "unknown" })
    : serviceProblem(code as "disk-full", { file });
}
