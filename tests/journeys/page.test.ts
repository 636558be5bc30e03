// A maker in the page: reads the answer, writes the sentence, follows a number to its cell, keeps a dated copy and opens it offline.
// Runs what `npm run build` made, in a real browser.
import { type ChildProcess, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, expect, it } from "vitest";
import { axeInPage } from "../support/axe-in-page.ts";
import { launchedBrowser, servedFolder, watchedPage } from "../support/journey.ts";

let folder = "";
let server: ChildProcess;
let url = "";
let browser: Browser;
let page: Page;
const violations: string[] = [];
const asked: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "thumbrule-page-"));
  cpSync("notebooks", folder, { recursive: true });
  ({ server, url } = await servedFolder(folder));
  browser = await launchedBrowser();
  page = await watchedPage(browser, violations);
  page.on("request", (request) => asked.push(request.url()));
});
afterAll(async () => {
  await browser?.close();
  const ended = new Promise((done) => server?.on("exit", done));
  server?.kill("SIGTERM");
  await ended;
  rmSync(folder, { recursive: true, force: true });
});

const notebook = () => readFileSync(join(folder, "stiffer-tops.md"), "utf8");
/** The editor once it has taken over from the plain field. */
const written = (name: string) =>
  page.getByRole("textbox", { name: `Text of ${name}` }).and(page.locator("[contenteditable]"));
const entry = (name: string) =>
  page.locator("section").filter({ has: page.getByRole("heading", { name: new RegExp(`${name}$`) }) });

it("opens at the printed address, takes the token out of it, and answers", async () => {
  await page.goto(url);
  expect(page.url()).not.toContain("token");
  await page.getByRole("link", { name: "Contents" }).click();
  await page.getByRole("link", { name: "Do stiffer tops end up thinner?" }).click();
  await page.getByRole("heading", { level: 1, name: "Do stiffer tops end up thinner?" }).waitFor();
  await entry("within-species").locator(".sentence").waitFor();
  expect(await entry("within-species").locator(".sentence").textContent()).toMatch(/mm/);
  expect(await entry("within-species").locator("svg.chart circle, svg.chart path").count()).toBeGreaterThan(20);
});

it("says the answer first, then draws it, then what to mind most, and the rest under why", async () => {
  const order = await entry("within-species").evaluate((section) =>
    [...section.querySelectorAll(".sentence, figure, .answer-view > .cautions, .why-details")].map(
      (part) => part.className || part.tagName.toLowerCase(),
    ),
  );
  expect(order).toEqual(["sentence", "picture-view", "cautions", "why-details"]);
  expect(await entry("within-species").locator(".answer-view > .cautions li").count()).toBe(2);
  expect(await entry("within-species").locator(".why-details .cautions li").count()).toBeGreaterThan(0);
  expect(await entry("within-species").locator("figcaption").textContent()).not.toContain("falls by");
});

it("says a verdict once, as a word beside its shape", async () => {
  const rule = entry("thicker-rings-longer");
  expect(await rule.locator(".verdict-mark").textContent()).toContain("Broken");
  expect(await rule.locator(".sentence").textContent()).toMatch(/^Since it was stated \(2023-03-01\), the slope/);
});

it("leads from the answer to the raw cell of the file", async () => {
  const within = entry("within-species");
  await within.getByText("Why", { exact: true }).click();
  await within.getByText("Where this comes from").click();
  for (const step of await within.locator(".trace-list li summary").all()) await step.click();
  const raw = within.locator(".trace-list .raw").first();
  await raw.waitFor();
  const written = (await raw.textContent()) ?? "";
  const records = ["tops.csv", "instruments.csv"]
    .map((name) => readFileSync(join(folder, "records", name), "utf8"))
    .join("\n");
  expect(records).toContain(written);
});

it("changes the answer while the sentence is written, and the file when it is saved", async () => {
  const before = notebook();
  const within = entry("within-species");
  const first = await within.locator(".sentence").textContent();
  await within.getByRole("button", { name: /^Write within-species/ }).click();
  await written("within-species").fill("final_thickness against density");
  await page.waitForFunction(
    ([old]) => ![...document.querySelectorAll(".sentence")].some((each) => each.textContent === old),
    [first],
  );
  expect(notebook()).toBe(before);
  await within.getByRole("button", { name: "Save" }).click();
  await page.getByText("Saved to stiffer-tops.md.").waitFor();
  expect(notebook()).toBe(
    before.replace(
      "final_thickness against stiffness_along, allowing for species\n```\n\nThe second",
      "final_thickness against density\n```\n\nThe second",
    ),
  );
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText("Undone, and saved.").waitFor();
  expect(notebook()).toBe(before);
  await page.locator("h1").click();
  await page.keyboard.press("Control+y");
  await page.getByText("Done again, and saved.").waitFor();
  await page.keyboard.press("Control+z");
  await page.getByText("Undone, and saved.").waitFor();
  expect(notebook()).toBe(before);
});

it("says under the sentence what is not understood, while all other answers stand", async () => {
  const within = entry("within-species");
  await within.getByRole("button", { name: /^Write within-species/ }).click();
  await written("within-species").fill("final_thicknes against stiffness_along");
  await within
    .getByText(/no column/)
    .first()
    .waitFor();
  expect(await entry("all-tops").locator(".sentence").textContent()).toMatch(/mm/);
  await within.getByRole("button", { name: "Leave as it was" }).click();
  await within.locator(".sentence").waitFor();
});

it("shows what another program changed in the file", async () => {
  const before = notebook();
  writeFileSync(
    join(folder, "stiffer-tops.md"),
    before.replace("Here the two books meet.", "Here the two books meet again."),
  );
  await page.getByText("Here the two books meet again.").waitFor();
  writeFileSync(join(folder, "stiffer-tops.md"), before);
  await page.getByText("Here the two books meet.", { exact: false }).waitFor();
});

it("asks which of two versions stands, where the maker sees it, when a file was changed under a sentence", async () => {
  const before = notebook();
  await entry("within-species")
    .getByRole("button", { name: /^Write within-species/ })
    .click();
  await written("within-species").fill("final_thickness against density");
  const theirs = before.replace("Here the two books meet.", "Here both books meet.");
  writeFileSync(join(folder, "stiffer-tops.md"), theirs);
  await page.getByText("stiffer-tops.md was changed by something else. What you are writing stays.").waitFor();
  await entry("within-species").getByRole("button", { name: "Save" }).click();
  const heading = page.getByRole("heading", { name: "stiffer-tops.md was changed by something else" });
  await heading.waitFor();
  expect(await heading.evaluate((each) => each === document.activeElement)).toBe(true);
  expect(notebook()).toBe(theirs);
  await page.getByRole("button", { name: "Take the file’s" }).click();
  await page.getByText("Here both books meet.", { exact: false }).waitFor();
  writeFileSync(join(folder, "stiffer-tops.md"), before);
  await page.getByText("Here the two books meet.", { exact: false }).waitFor();
  // Refused on purpose, and said by the browser too.
  violations.splice(0, violations.length, ...violations.filter((each) => !each.includes("409")));
});

it("keeps a dated copy that opens from disk with the network off, and that verifies until a byte is changed", async () => {
  await page.getByText("Dated copy", { exact: true }).click();
  await page.getByLabel("Date of the copy").fill("2026-03-14");
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the dated copy" }).click();
  const file = join(folder, "copy.html");
  await (await coming).saveAs(file);
  const offline = await browser.newContext({ offline: true });
  const copy = await offline.newPage();
  const fetched: string[] = [];
  copy.on("request", (request) => fetched.push(request.url()));
  await copy.goto(pathToFileURL(file).href);
  expect(await copy.getByRole("heading", { level: 1 }).textContent()).toBe("Do stiffer tops end up thinner?");
  expect(await copy.locator(".sentence").count()).toBeGreaterThan(4);
  expect(fetched).toEqual([pathToFileURL(file).href]);
  await offline.close();
  const verify = (path: string) =>
    spawnSync(process.execPath, ["dist/node/thumbrule.js", "verify", path], { encoding: "utf8" });
  expect(verify(file).status).toBe(0);
  const bytes = readFileSync(file);
  bytes[Math.floor(bytes.length / 2)]! ^= 1;
  writeFileSync(file, bytes);
  expect(verify(file).status).toBe(1);
});

it("has no fault that a checker of accessibility finds, wide, narrow and dark", async () => {
  const context = await browser.newContext({ bypassCSP: true, storageState: await page.context().storageState() });
  for (const [width, colorScheme] of [
    [1200, "light"],
    [360, "light"],
    [1200, "dark"],
  ] as const) {
    const view = await context.newPage();
    await view.setViewportSize({ width, height: 900 });
    await view.emulateMedia({ colorScheme });
    await view.goto(page.url());
    await view.locator(".sentence").first().waitFor();
    // Opening everything once is enough: the checker takes its time over long tables.
    if (width === 360)
      await view.evaluate(() => {
        for (const details of document.querySelectorAll("details")) details.open = true;
      });
    expect(await axeInPage(view)).toEqual([]);
    expect(await view.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    await view.close();
  }
  await context.close();
});

it("asked nothing of any other place, and met no refusal of its own policy", () => {
  const home = new URL(url).origin;
  expect(asked.filter((address) => !address.startsWith(home) && !address.startsWith("blob:"))).toEqual([]);
  expect(violations).toEqual([]);
});
