// How tests find a browser: THUMBRULE_BROWSER, else the system's Chromium, else the one packed inside a development
// dependency (x64 Linux), unpacked once under node_modules/.cache with its own font so that a bare machine can draw.
import { spawnSync } from "node:child_process";
import {
  accessSync,
  constants,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createRequire } from "node:module";
import { delimiter, dirname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { brotliDecompressSync } from "node:zlib";

export const BROWSER_FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
] as const;

export type FoundBrowser = {
  readonly path: string;
  readonly source: "asked" | "system" | "packed";
  readonly env: Readonly<Record<string, string>>;
};

const NAMES = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome"];
const HELP = "Install Chromium (Debian: apt-get install chromium) or set THUMBRULE_BROWSER to a browser.";

function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

const starts = (path: string, env: Readonly<Record<string, string>>) =>
  spawnSync(path, ["--version"], { env: { ...process.env, ...env }, timeout: 20_000 }).status === 0;

/** The browser to test with, or an error that says how to get one. */
export function foundBrowser(cache = resolve("node_modules/.cache/thumbrule-browser")): FoundBrowser {
  const asked = process.env.THUMBRULE_BROWSER;
  if (asked && asked !== "none") {
    if (!runs(asked)) throw new Error(`THUMBRULE_BROWSER is not an executable file: ${asked}`);
    return { path: asked, source: "asked", env: {} };
  }
  if (asked !== "none")
    for (const folder of (process.env.PATH ?? "").split(delimiter))
      for (const name of NAMES)
        if (folder && runs(join(folder, name))) return { path: join(folder, name), source: "system", env: {} };
  return packedBrowser(cache);
}

function packedBrowser(cache: string): FoundBrowser {
  if (process.platform !== "linux" || process.arch !== "x64") throw new Error(`No browser found. ${HELP}`);
  const home = join(cache, "147.0.0");
  if (!existsSync(home)) unpack(cache, home);
  const path = join(home, "browser");
  const fonts = { FONTCONFIG_FILE: join(home, "fonts.conf") };
  const libraries = [join(home, "lib"), process.env.LD_LIBRARY_PATH].filter(Boolean).join(":");
  for (const env of [fonts, { ...fonts, LD_LIBRARY_PATH: libraries }])
    if (starts(path, env)) return { path, source: "packed", env };
  throw new Error(`The packed browser does not start on this machine. ${HELP}`);
}

/** Unpacked beside, then renamed: two test runs may race safely. */
function unpack(cache: string, home: string): void {
  const require = createRequire(pathToFileURL(resolve("package.json")));
  const packed = resolve(dirname(require.resolve("@sparticuz/chromium")), "../../bin");
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, "unpack-"));
  const read = (file: string) => brotliDecompressSync(readFileSync(join(packed, file)));
  writeFileSync(join(folder, "browser"), read("chromium.br"), { mode: 0o755 });
  for (const tar of ["swiftshader", "fonts", "al2023"]) untar(read(`${tar}.tar.br`), folder);
  const fonts = `<dir>${join(home, "fonts")}</dir><cachedir>${join(home, "font-cache")}</cachedir>`;
  writeFileSync(
    join(folder, "fonts.conf"),
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>${fonts}</fontconfig>`,
  );
  try {
    renameSync(folder, home);
  } catch (failure) {
    rmSync(folder, { recursive: true });
    if (!existsSync(home)) throw failure;
  }
}

/** Plain ustar: regular files and folders only. */
function untar(archive: Buffer, to: string): void {
  const text = (from: number, length: number) => archive.toString("utf8", from, from + length).replace(/\0.*$/s, "");
  for (let at = 0; at + 512 <= archive.length && archive[at]; ) {
    const name = text(at, 100);
    const size = Number.parseInt(text(at + 124, 12), 8) || 0;
    const kind = String.fromCharCode(archive[at + 156] ?? 0);
    const out = resolve(to, name);
    if (!out.startsWith(resolve(to))) throw new Error(`bad entry ${name}`);
    if (kind === "0" || kind === "\0") {
      mkdirSync(dirname(out), { recursive: true });
      writeFileSync(out, archive.subarray(at + 512, at + 512 + size), { mode: 0o755 });
    }
    at += 512 + Math.ceil(size / 512) * 512;
  }
}
