// An apprentice with a dated copy and no network: opens the file, turns the dial by keyboard, sees what follows, and has it verified.
// Runs what `npm run build` made, in a real browser.
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, expect, it } from "vitest";
import { closeTo } from "../support/close-to.ts";
import { launchedBrowser } from "../support/journey.ts";

let folder = "";
let browser: Browser;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "thumbrule-copy-"));
  cpSync("notebooks", folder, { recursive: true });
  browser = await launchedBrowser();
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

const thumbrule = (...words: string[]) =>
  spawnSync(process.execPath, ["dist/node/thumbrule.js", ...words], { encoding: "utf8", timeout: 60_000 });

function shared(notebook: string): string {
  const file = join(folder, `${notebook}.html`);
  const run = thumbrule("share", join(folder, notebook), "--date", "2026-03-14", "-o", file);
  expect(run.stderr).toBe("");
  expect(run.status).toBe(0);
  return file;
}

type Opened = {
  readonly page: Page;
  readonly asked: string[];
  readonly faults: string[];
  readonly close: () => Promise<void>;
};

/** The file open without a network, with everything that it asks for and every refusal of its own policy written down. */
async function opened(file: string, script = true): Promise<Opened> {
  const context = await browser.newContext({ offline: true, javaScriptEnabled: script });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const [asked, faults]: [string[], string[]] = [[], []];
  page.on("request", (request) => asked.push(request.url()));
  page.on("pageerror", (error) => faults.push(error.message));
  page.on("console", (message) => faults.push(message.text()));
  await page.exposeFunction("refused", (what: string) => void faults.push(what));
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) => {
      (window as unknown as { refused: (what: string) => void }).refused(`${event.violatedDirective} ${event.sample}`);
    });
  });
  await page.goto(pathToFileURL(file).href);
  return { page, asked, faults, close: () => context.close() };
}

const entry = (page: Page, name: string) => page.locator(`.entry[data-entry="${name}"] .answered`);
const amount = async (page: Page, name: string) => (await entry(page, name).locator("strong").textContent()) ?? "";
const changed = (page: Page, name: string, before: string) =>
  page.waitForFunction(
    ([of, old]) => document.querySelector(`.entry[data-entry="${of}"] .answered`)?.textContent !== old,
    [name, before] as const,
  );

it("turns a dial by keyboard offline, and the value that depends on it follows to the right amount", async () => {
  const file = shared("stiffer-tops.md");
  const { page, asked, faults, close } = await opened(file);
  const untouched = await entry(page, "within-species").innerHTML();
  const dial = page.getByRole("slider", { name: "target_stiffness" });
  await dial.focus();
  const before = (await entry(page, "next_thickness").textContent()) ?? "";
  await page.keyboard.press("End");
  await changed(page, "next_thickness", before);
  // The notebook's own formula by hand: the third root of 12 · 20 N m / 11.8 GPa is 2.7295 mm, of 12 · 5 N m / 11.8 GPa 1.7195 mm.
  closeTo(Number.parseFloat(await amount(page, "next_thickness")), 2.7295, 1e-3);
  expect(await page.getByRole("spinbutton", { name: /^target_stiffness in/ }).inputValue()).toBe("20");
  expect(await dial.evaluate((element) => element === document.activeElement)).toBe(true);
  const second = (await entry(page, "next_thickness").textContent()) ?? "";
  await page.getByRole("spinbutton", { name: /^target_stiffness in/ }).fill("5");
  await page.keyboard.press("Enter");
  await changed(page, "next_thickness", second);
  closeTo(Number.parseFloat(await amount(page, "next_thickness")), 1.7195, 1e-3);
  expect(await page.getByRole("status").textContent()).toContain("as it was made");
  expect(await entry(page, "within-species").innerHTML()).toBe(untouched);
  expect(asked).toEqual([pathToFileURL(file).href]);
  expect(faults).toEqual([]);
  await close();
  expect(thumbrule("verify", file).status).toBe(0);
});

const SCALED = `---
title: Scaled
---
\`\`\`records tops
from records/tops.csv
piece is top_id
\`\`\`

\`\`\`dial scale
2 from 1 to 10
\`\`\`

\`\`\`columns tops
scaled_mass = mass * scale in g
\`\`\`

\`\`\`question heavier
scaled_mass against thickness
\`\`\`

\`\`\`question as-weighed
mass against thickness
\`\`\`

\`\`\`picture heavier-drawn
scaled_mass against thickness
\`\`\`
`;

it("answers questions and draws pictures again that hang on a dial, and leaves the others", async () => {
  writeFileSync(join(folder, "scaled.md"), SCALED);
  const file = shared("scaled.md");
  const { page, asked, faults, close } = await opened(file);
  const slope = async (name: string) => {
    const sentence = (await entry(page, name).locator(".sentence").textContent()) ?? "";
    return Number(/rises by ([\d.]+) g for each mm/.exec(sentence)?.[1]);
  };
  const drawn = (name: string) => entry(page, name).locator("svg.chart").first().innerHTML();
  const [slopeBefore, pictureBefore, other] = [
    await slope("heavier"),
    await drawn("heavier-drawn"),
    await drawn("as-weighed"),
  ];
  const before = (await entry(page, "heavier").textContent()) ?? "";
  await page.getByRole("slider", { name: "scale" }).focus();
  await page.keyboard.press("End");
  await changed(page, "heavier", before);
  // Five times the mass, five times the slope: both are printed with two digits.
  closeTo(await slope("heavier"), 5 * slopeBefore, 0.05);
  expect(await drawn("heavier-drawn")).not.toBe(pictureBefore);
  expect(await entry(page, "heavier-drawn").locator("svg.chart circle, svg.chart path").count()).toBeGreaterThan(20);
  expect(await drawn("as-weighed")).toBe(other);
  expect(asked).toEqual([pathToFileURL(file).href]);
  expect(faults).toEqual([]);
  await close();
  expect(thumbrule("verify", file).status).toBe(0);
});

it("is HTML without script: sentences, numbers and pictures stand, and the dial says where it was", async () => {
  const { page, asked, close } = await opened(shared("stiffer-tops.md"), false);
  expect(await page.locator(".sentence").count()).toBeGreaterThan(4);
  expect(await page.locator("svg.chart").count()).toBeGreaterThan(4);
  expect(await page.getByRole("slider", { name: "target_stiffness" }).isDisabled()).toBe(true);
  expect(asked).toHaveLength(1);
  await close();
});

it("carries no program that a copy has no use for", () => {
  const whole = shared("stiffer-tops.md");
  const still = shared("rig.md");
  const script = (file: string) =>
    /<script type="module">([\s\S]*)<\/script>/.exec(readFileSync(file, "utf8"))?.[1] ?? "";
  expect(script(whole)).not.toMatch(/arquero|join_left|BAD_DELIMITERS|micromark|TAG_RESOLVE_FAILED/i);
  expect(script(still).length).toBeLessThan(5_000);
});
