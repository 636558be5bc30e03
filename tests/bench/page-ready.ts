// The page in a real browser: from the address to the first answer, and what was fetched until then.
import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { type Browser, chromium } from "playwright";
import { BROWSER_FLAGS, foundBrowser } from "../support/browser.ts";
import { type BenchLine, timeOf } from "./bench-line.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const [READY, FIRST_LOAD, ROUNDS] = [1500, 250_000, 5];

const printedUrl = (server: ChildProcess) =>
  new Promise<string>((found, gone) => {
    let text = "";
    server.stdout?.on("data", (part) => {
      text += String(part);
      const url = /http:\/\/127\.0\.0\.1:\d+\/\?token=\S+/.exec(text)?.[0];
      if (url) found(url);
    });
    server.on("exit", (code) => gone(new Error(`the server ended with ${code}`)));
  });

/** One visit with nothing kept from another: milliseconds to the first answer, bytes over the wire until then. */
async function visit(browser: Browser, url: string): Promise<{ ready: number; bytes: number; files: number }> {
  const context = await browser.newContext();
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  let [bytes, files] = [0, 0];
  session.on("Network.loadingFinished", (event) => {
    bytes += event.encodedDataLength;
    files++;
  });
  await session.send("Network.enable");
  const ready = await timeOf(async () => {
    await page.goto(`${url}#stiffer-tops.md`, { waitUntil: "commit" });
    await page.locator(".sentence").first().waitFor();
  });
  const loaded = { ready, bytes, files };
  await context.close();
  return loaded;
}

/** Two lines: the page of a running server, and `start` with the page, from nothing. */
export async function pageReady(): Promise<readonly BenchLine[]> {
  const found = foundBrowser();
  const env = { ...process.env, ...found.env } as Record<string, string>;
  const browser = await chromium.launch({ executablePath: found.path, args: [...BROWSER_FLAGS], env });
  const [starts, warm, blank]: [number[], number[], number[]] = [[], [], []];
  let first = { ready: 0, bytes: 0, files: 0 };
  try {
    for (let round = 0; round < ROUNDS; round++) {
      const context = await browser.newContext();
      const empty = await context.newPage();
      blank.push(await timeOf(() => empty.setContent("<p class=sentence>1</p>")));
      await context.close();
      const server = spawn(process.execPath, ["dist/node/start.js", "notebooks"], {
        cwd: root,
        stdio: ["ignore", "pipe", "inherit"],
      });
      const ended = new Promise((done) => server.on("exit", done));
      let url = "";
      const start = await timeOf(async () => {
        url = await printedUrl(server);
      });
      first = await visit(browser, url);
      starts.push(start + first.ready);
      warm.push((await visit(browser, url)).ready);
      server.kill("SIGTERM");
      await ended;
    }
  } finally {
    await browser.close();
  }
  const line = (name: string, times: readonly number[], note?: string): BenchLine => {
    const ours = Math.min(...times);
    const aim = { words: `under ${READY} ms`, within: ours < READY };
    return {
      name,
      baseline: "a page of one word, no server",
      ours,
      theirs: Math.min(...blank),
      aim,
      ...(note ? { note } : {}),
    };
  };
  const size = `${(first.bytes / 1000).toFixed(1)} kB in ${first.files} answers over the wire until the first answer shows (at most ${FIRST_LOAD / 1000} kB: ${first.bytes <= FIRST_LOAD ? "within" : "over"})`;
  return [line("page ready, server just started", starts, size), line("page ready, server running", warm)];
}
