// What the built page fetches before answers show, as the server sends it over the wire. The build runs before the tests.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readFileSync } from "node:fs";
import { get, type IncomingMessage } from "node:http";
import { createInterface } from "node:readline";
import { buffer } from "node:stream/consumers";
import { gunzipSync } from "node:zlib";
import { expect, it } from "vitest";

const root = new URL("../../", import.meta.url);
const built = ["dist/app/files.json", "dist/node/start.js"].every((file) => existsSync(new URL(file, root)));
type Part = {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
  readonly css?: readonly string[];
};

/** Addresses of the page's own files that come before the first answer: the entry, what it imports, its styles. */
function pageFiles(): readonly string[] {
  const parts = JSON.parse(readFileSync(new URL("dist/app/files.json", root), "utf8")) as Record<string, Part>;
  const first = new Set<string>();
  const take = (name: string) => {
    const part = parts[name]!;
    for (const file of [part.file, ...(part.css ?? [])]) first.add(`/${file}`);
    for (const more of part.imports ?? []) take(more);
  };
  for (const [name, part] of Object.entries(parts)) if (part.isEntry) take(name);
  return ["/", ...first];
}

/** A running server over the demo's folder, asked as a browser asks. */
async function withServer<T>(
  work: (ask: (path: string) => Promise<{ answer: IncomingMessage; sent: Buffer }>) => Promise<T>,
): Promise<T> {
  const server = spawn(process.execPath, ["dist/node/start.js", "notebooks"], {
    cwd: root,
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = once(server, "exit");
  try {
    let url = "";
    for await (const line of createInterface({ input: server.stdout })) {
      url = /http:\/\/127\.0\.0\.1:\d+\/\?token=\S+/.exec(line)?.[0] ?? "";
      if (url) break;
    }
    let cookie = "";
    const ask = async (path: string) => {
      const headers = { "accept-encoding": "gzip, deflate, br", ...(cookie ? { cookie } : {}) };
      const [answer] = (await once(get(new URL(path, url), { headers }), "response")) as [IncomingMessage];
      return { answer, sent: await buffer(answer) };
    };
    cookie = (await ask(url)).answer.headers["set-cookie"]?.[0]?.split(";")[0] ?? "";
    return await work(ask);
  } finally {
    server.kill("SIGTERM");
    await ended;
  }
}

it.skipIf(!built)("shows answers after at most 60 kB of page, no editor, and 250 kB with all its answers", async () => {
  const files = pageFiles();
  expect(files.filter((file) => /editor/.test(file))).toEqual([]);
  const sizes = await withServer(async (ask) => {
    const found = new Map<string, number>();
    for (const path of [...files, "/api/workspace", "/api/notebook/stiffer-tops.md"]) {
      const { answer, sent } = await ask(path);
      expect(answer.statusCode, path).toBe(200);
      found.set(path, sent.length);
      if (path.startsWith("/api/notebook"))
        expect((JSON.parse(gunzipSync(sent).toString("utf8")) as { file: string }).file).toBe("stiffer-tops.md");
    }
    return found;
  });
  const sum = (paths: readonly string[]) => paths.reduce((all, path) => all + sizes.get(path)!, 0);
  expect(sum(files)).toBeLessThan(60_000);
  expect(sum([...sizes.keys()])).toBeLessThanOrEqual(250_000);
});
