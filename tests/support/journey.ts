// What every journey begins with: the built program serving a folder, a real browser, a page whose errors are kept.
import { type ChildProcess, spawn } from "node:child_process";
import { type Browser, chromium, type Page } from "playwright";
import { BROWSER_FLAGS, foundBrowser } from "./browser.ts";

/** The program over a folder, and the address that it prints. */
export async function servedFolder(folder: string): Promise<{ readonly server: ChildProcess; readonly url: string }> {
  const server = spawn(process.execPath, ["dist/node/start.js", folder], { stdio: ["ignore", "pipe", "inherit"] });
  const url = await new Promise<string>((found, gone) => {
    let text = "";
    server.stdout.on("data", (part) => {
      text += String(part);
      const line = /http:\/\/127\.0\.0\.1:\d+\/\?token=\S+/.exec(text)?.[0];
      if (line) found(line);
    });
    server.on("exit", (code) => gone(new Error(`the server ended with ${code}`)));
  });
  return { server, url };
}

export function launchedBrowser(): Promise<Browser> {
  const found = foundBrowser();
  return chromium.launch({
    executablePath: found.path,
    args: [...BROWSER_FLAGS],
    env: { ...process.env, ...found.env } as Record<string, string>,
  });
}

/** A page, and what went wrong in it: errors of its console and of its program, policy violations among them. */
export async function watchedPage(browser: Browser, violations: string[]): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  page.setDefaultTimeout(10_000);
  page.on("console", (message) => {
    if (message.type() === "error") violations.push(message.text());
  });
  page.on("pageerror", (error) => violations.push(error.message));
  return page;
}
