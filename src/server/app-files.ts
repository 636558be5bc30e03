// The files of the built page, all read at the start: a request is looked up in this list and never joined to a path.
import { readdirSync, readFileSync } from "node:fs";
import { extname, join, sep } from "node:path";
import { gzipSync } from "node:zlib";

export type AppFile = {
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly gzip: Uint8Array<ArrayBuffer>;
  readonly lasting: boolean;
};
export type AppFiles = ReadonlyMap<string, AppFile>;

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
};

/** Reads the built page: address ("/assets/main-1a2b.js") to file. Endings that the page has no use for are left out, maps among them. */
export function appFiles(folder: string): AppFiles {
  const files = new Map<string, AppFile>();
  for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
    const type = TYPES[extname(name)];
    if (type === undefined) continue;
    const bytes = new Uint8Array(readFileSync(join(folder, name)));
    const address = `/${name.split(sep).join("/")}`;
    files.set(address === "/index.html" ? "/" : address, {
      type,
      bytes,
      gzip: new Uint8Array(gzipSync(bytes)),
      lasting: address.startsWith("/assets/"),
    });
  }
  return files;
}
