// A maker's first day: an empty folder, three untidy files brought in, one question answered for each, a notebook that answers, and next
// month's export that asks nothing. Runs what `npm run build` made, in a real browser.
import type { ChildProcess } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, expect, it } from "vitest";
import { axeInPage } from "../support/axe-in-page.ts";
import { launchedBrowser, servedFolder, watchedPage } from "../support/journey.ts";

let folder = "";
let elsewhere = "";
let server: ChildProcess;
let url = "";
let browser: Browser;
let page: Page;
const violations: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "thumbrule-import-"));
  elsewhere = mkdtempSync(join(tmpdir(), "thumbrule-exports-"));
  ({ server, url } = await servedFolder(folder));
  browser = await launchedBrowser();
  page = await watchedPage(browser, violations);
});
afterAll(async () => {
  await browser?.close();
  const ended = new Promise((done) => server?.on("exit", done));
  server?.kill("SIGTERM");
  await ended;
  for (const made of [folder, elsewhere]) rmSync(made, { recursive: true, force: true });
});

/** Thirty tops of two woods: cedar is the lighter by a quarter. `first`: number of the first; so next month's are others. */
const tops = (first: number) => {
  const rows = Array.from({ length: 30 }, (_, i) => {
    const cedar = i % 2 === 0;
    return `T-${first + i};${cedar ? "cedar" : "spruce"};0,${(cedar ? 150 : 200) + ((i * 7) % 11)};1,${300 + i}`;
  });
  return ["Bought at the spring sale;;;", "", "Piece;Wood;Mass;Weight (kg)", ...rows, "", "Mean;;0,2;1,3", ""].join(
    "\r\n",
  );
};
/** Only the weight can be read two ways here: every mass begins with a lone 0. */
const april = tops(1).replaceAll(/;0,(\d+);/g, ";$1;");
const sales = `Instrument,Sold on,Price\n${Array.from({ length: 8 }, (_, i) => `G-${i},${1 + i}/${2 + i}/2024,${2000 + i}`).join("\n")}\n`;
/** As a program of Windows writes it: one byte a letter, and nothing that says so. */
const woods = Buffer.from(
  `Board,Holz,Dicke (mm)\n${Array.from({ length: 8 }, (_, i) => `B-${i},${i % 2 ? "F\u00f6hre" : "Zeder"},${2 + i / 10}`).join("\n")}\n`,
  "latin1",
);

const written = (name: string, bytes: string | Uint8Array) => {
  const path = join(elsewhere, name);
  writeFileSync(path, bytes);
  return path;
};
const kept = (name: string) => readFileSync(join(folder, "records", name));
const file = () => page.locator("input[type=file]");
const status = (text: string | RegExp) => page.getByText(text).first().waitFor();
/** Brings in a file from the import page, with one answer where it asks. */
async function bringIn(name: string, bytes: string | Uint8Array, answer?: RegExp) {
  await page.getByRole("link", { name: "Bring in a table" }).first().click();
  const again = page.getByRole("button", { name: "Bring in another table" });
  if (await again.isVisible()) await again.click();
  await file().setInputFiles(written(name, bytes));
  await page.getByRole("heading", { level: 1, name }).waitFor();
  await status(/^Read: /);
  if (answer) {
    expect(await page.locator("fieldset").count()).toBe(1);
    await page.getByRole("radio", { name: answer }).check();
    await status(/^Read again: /);
  } else expect(await page.locator("fieldset").count()).toBe(0);
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.getByRole("heading", { name: `records/${name} is in the folder` }).waitFor();
}

it("opens on bringing in a table where the folder is empty", async () => {
  await page.goto(url);
  await page.getByRole("heading", { level: 1, name: "Bring in a table" }).waitFor();
});

it("shows raw beside read, what is no record, and the way from each warning to its cell", async () => {
  await file().setInputFiles(written("tops-april.csv", april));
  await status("Read: 30 warnings, 1 question open.");
  const cell = page.locator("#read-1-30-4");
  expect(await cell.locator(".raw").textContent()).toBe("1,329");
  expect(await cell.locator(".reading").textContent()).toBe("not readable");
  await page.getByText("2 lines are no record").click();
  await page.getByText("Bought at the spring sale;;;").waitFor();
  await page.getByText(/^30 × This can be read two ways/).click();
  await page.getByRole("button", { name: "row 30, Weight" }).press("Enter");
  expect(await cell.evaluate((each) => each === document.activeElement)).toBe(true);
});

it("asks once which mark is decimal, and reads again by the answer", async () => {
  await page.getByRole("radio", { name: "The comma: 1,300 is 1.3 kg, 1,301 is 1.301 kg, 1,302 is 1.302 kg" }).check();
  await status("Read again: 0 warnings left.");
  expect(await page.locator("#read-1-30-4 .reading").textContent()).toBe("1.329 kg");
  expect(existsSync(join(folder, "records"))).toBe(false);
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.getByRole("heading", { name: "records/tops-april.csv is in the folder" }).waitFor();
  expect(kept("tops-april.csv").toString()).toBe(april);
  expect(JSON.parse(kept("tops-april.about.json").toString()).read).toEqual({ decimal: "," });
});

it("begins a notebook with it whose answer needs no touching", async () => {
  const heading = page.getByRole("heading", { level: 1 });
  expect(await heading.evaluate((each) => each === document.activeElement)).toBe(true);
  await page.getByRole("button", { name: "Begin the notebook" }).click();
  await page.getByRole("heading", { level: 1, name: "First look at tops april" }).waitFor();
  const answer = await page.locator(".sentence").first().textContent();
  expect(answer).toMatch(/cedar|spruce/);
  expect(answer).toMatch(/30 records|15/);
  expect(await page.locator(".problem-view").count()).toBe(0);
});

it("brings in a second file with one answer about its dates, and a third with one about its letters", async () => {
  await bringIn("sales.csv", sales, /^The day: 1\/2\/2024 is 1 February 2024/);
  await bringIn("woods.csv", woods, /Western European.*Föhre/);
  expect(JSON.parse(kept("sales.about.json").toString()).read).toEqual({ dayFirst: true });
  expect(JSON.parse(kept("woods.about.json").toString()).read).toEqual({ encoding: "windows-1252" });
  expect(kept("woods.csv").equals(woods)).toBe(true);
});

it("asks nothing of next month's export of the same shape, and says whose answers it was read with", async () => {
  const may = tops(31).replaceAll(/;0,(\d+);/g, ";$1;");
  await bringIn("tops-may.csv", may);
  expect(JSON.parse(kept("tops-may.about.json").toString()).read).toEqual({ decimal: "," });
});

it("replaces a table only when told to, and the notebook answers with the new records", async () => {
  const later = tops(61).replaceAll(/;0,(\d+);/g, ";$1;");
  await page.getByRole("button", { name: "Bring in another table" }).click();
  await file().setInputFiles(written("tops-april.csv", later));
  await page.getByText(/^Read as you answered before/).waitFor();
  const button = page.getByRole("button", { name: "Bring it in" });
  expect(await button.isDisabled()).toBe(true);
  await page.getByRole("checkbox", { name: /There is a tops-april.csv already/ }).check();
  await button.click();
  await page.getByRole("heading", { name: "records/tops-april.csv is in the folder" }).waitFor();
  expect(kept("tops-april.csv").toString()).toBe(later);
  expect(readdirSync(join(folder, "records")).filter((name) => name.includes("tops-april.csv.")).length).toBe(1);
  await page.getByRole("link", { name: "Contents" }).click();
  await page.getByRole("link", { name: "First look at tops april" }).click();
  await page.locator(".sentence").first().waitFor();
  await page.getByText("T-61").first().waitFor();
  expect(await page.locator(".problem-view").count()).toBe(0);
});

it("reads cells that are pasted, and adds the table to a notebook that there is", async () => {
  await page.getByRole("link", { name: "Bring in a table" }).first().click();
  const cells = page.getByRole("textbox", { name: "Cells copied from a sheet or a message" });
  await cells.evaluate((area) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "Piece\tHeight (mm)\nA\t12\nB\t13\n");
    area.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  });
  await status("Read: 0 warnings.");
  await page.getByRole("textbox", { name: "Its name in the folder called records" }).fill("heights.tsv");
  await page.getByRole("button", { name: "Bring it in" }).click();
  await page.getByRole("heading", { name: "records/heights.tsv is in the folder" }).waitFor();
  await page.getByRole("button", { name: "Add it at the end" }).click();
  await page.getByText("heights: 2 records").waitFor();
  expect(readFileSync(join(folder, "tops-april.md"), "utf8")).toMatch(
    /```records heights\nfrom records\/heights\.tsv\n```\n$/,
  );
});

it("takes a file that is dropped anywhere, and keeps what was chosen when the server refuses it", async () => {
  await page.evaluate(() => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File(["Piece,Mass (g)\nA,12\n"], "dropped.csv"));
    document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
  });
  await page.getByRole("heading", { level: 1, name: "dropped.csv" }).waitFor();
  const name = page.getByRole("textbox", { name: "Its name in the folder called records" });
  await name.fill("dropped.exe");
  await page.getByRole("button", { name: "Bring it in" }).click();
  await status(/The name of a table ends in \.csv/);
  expect(await name.inputValue()).toBe("dropped.exe");
  expect(await page.locator("#read-1-1-2 .reading").textContent()).toBe("12 g");
});

it("has no fault that a checker of accessibility finds, wide, narrow, dark and in forced colours", async () => {
  const context = await browser.newContext({ bypassCSP: true, storageState: await page.context().storageState() });
  for (const [width, colorScheme, forcedColors] of [
    [1200, "light", "none"],
    [320, "light", "none"],
    [1200, "dark", "none"],
    [1200, "dark", "active"],
  ] as const) {
    const view = await context.newPage();
    await view.setViewportSize({ width, height: 900 });
    await view.emulateMedia({ colorScheme, forcedColors });
    await view.goto(`${new URL(url).origin}/#bring-in`);
    await view.locator("input[type=file]").setInputFiles(written("rough.csv", april.replace("T-3;cedar", "T-3;Cedar")));
    await view
      .getByText(/^Read: /)
      .first()
      .waitFor();
    await view.evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
    });
    expect(await axeInPage(view)).toEqual([]);
    expect(await view.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    await view.close();
  }
  await context.close();
});

it("offers a notebook for each table of a folder that has only tables", async () => {
  const bare = mkdtempSync(join(tmpdir(), "thumbrule-tables-"));
  writeFileSync(
    join(bare, "tops.csv"),
    "Piece,Wood,Thickness (mm)\nA,cedar,2.1\nB,cedar,2.2\nC,spruce,2.3\nD,spruce,2.5\n",
  );
  const { server: own, url: address } = await servedFolder(bare);
  const context = await browser.newContext();
  const first = await context.newPage();
  await first.goto(address);
  await first.getByText("There is no notebook in this folder yet.").waitFor();
  await first.getByRole("link", { name: "Begin one with tops.csv" }).click();
  await first.getByRole("button", { name: "Begin the notebook" }).click();
  await first.getByRole("heading", { level: 1, name: "First look at tops" }).waitFor();
  await first.locator(".sentence").first().waitFor();
  await context.close();
  const ended = new Promise((done) => own.on("exit", done));
  own.kill("SIGTERM");
  await ended;
  rmSync(bare, { recursive: true, force: true });
});

it("met no refusal of its own policy", () => {
  expect(violations.filter((text) => !text.includes("422"))).toEqual([]);
});
