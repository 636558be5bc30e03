// A maker mends the records in the page: a cell that could not be read, a row set aside, a record added, undone and done again. The file
// stays as it was until it is written, and then only what was edited is another. Runs what `npm run build` made.
import type { ChildProcess } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, expect, it } from "vitest";
import { launchedBrowser, servedFolder, watchedPage } from "../support/journey.ts";

let folder = "";
let server: ChildProcess;
let browser: Browser;
let page: Page;
let before = Buffer.alloc(0);
const violations: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "thumbrule-records-"));
  cpSync("notebooks", folder, { recursive: true });
  before = file();
  const served = await servedFolder(folder);
  server = served.server;
  browser = await launchedBrowser();
  page = await watchedPage(browser, violations);
  page.on("response", (answer) => {
    if (answer.status() >= 400) violations.push(`${answer.status()} ${answer.request().method()} ${answer.url()}`);
  });
  page.on("pageerror", (error) => violations.push(error.message));
  await page.goto(served.url);
});
afterAll(async () => {
  await browser?.close();
  const ended = new Promise((done) => server?.on("exit", done));
  server?.kill("SIGTERM");
  await ended;
  rmSync(folder, { recursive: true, force: true });
});

const file = () => readFileSync(join(folder, "records/tops.csv"));
const line = (bytes: Buffer, number: number) => bytes.toString("utf8").split(/\r?\n/)[number - 1];
const lines = (bytes: Buffer) => bytes.toString("utf8").split(/\r?\n/).length;
const status = (text: string | RegExp) => page.getByRole("status").filter({ hasText: text }).waitFor();
const row = (number: number) => page.locator(`.records-grid tr[data-position='${number - 1}']`);
/** Row (from 1) and column of the cell that has focus. */
const at = () =>
  page.evaluate(() => [
    Number(document.activeElement?.closest("tr")?.dataset.position) + 1,
    Number((document.activeElement as HTMLElement | null)?.dataset.col),
  ]);
const used = async () => {
  await page.getByRole("link", { name: "Contents" }).click();
  await page.getByRole("link", { name: "Do stiffer tops end up thinner?" }).click();
  const within = page.locator("section").filter({ has: page.getByRole("heading", { name: /within-species$/ }) });
  await within.locator(".sentence").waitFor();
  return (await within.locator(".why-details dd").filter({ hasText: " used" }).textContent()) ?? "";
};
let atFirst = "";

it("leads from the contents, and from the notebook's own records, to the table", async () => {
  atFirst = await used();
  await page.getByRole("link", { name: "Edit these records: records/tops.csv" }).click();
  await page.getByRole("heading", { level: 1, name: "records/tops.csv" }).waitFor();
  await page.getByRole("link", { name: "Contents" }).click();
  await page.getByRole("link", { name: "records/tops.csv", exact: true }).click();
  await page.getByRole("grid").waitFor();
  expect(await page.getByRole("grid").getAttribute("aria-colcount")).toBe("15");
});

it("leads from a warning to its cell, which says what is wrong and is mended there", async () => {
  await page.getByText("6 warnings", { exact: true }).click();
  await page.getByRole("button", { name: "row 43, Mass" }).click();
  await page.getByRole("group", { name: "About this cell" }).getByText("Warning:").waitFor();
  await expect.poll(at).toEqual([43, 6]);
  await page.keyboard.press("Enter");
  await page.keyboard.type("160.1");
  await page.keyboard.press("Enter");
  await status("Saved: Mass of row 43 is read as 160.1 g.");
  await expect.poll(at).toEqual([43, 6]);
  await page.getByText("5 warnings", { exact: true }).waitFor();
});

it("sets a row aside with its reason, and the notebook's answer follows", async () => {
  await page.keyboard.press("Control+Home");
  await expect.poll(at).toEqual([1, 0]);
  await page.keyboard.press("Enter");
  await page.keyboard.type("weighed wet");
  await page.keyboard.press("Enter");
  await status("Row 1 is set aside: weighed wet.");
  expect(await row(1).locator("th").textContent()).toContain("set aside");
  const now = await used();
  expect(atFirst).toContain("T-01");
  expect(now.split(".")[0]).not.toContain("T-01");
  await page.goBack();
  await page.goBack();
  await page.getByRole("grid").waitFor();
});

it("adds a record by its form, undoes it, and does it again", async () => {
  await page.getByText("Add a record", { exact: true }).click();
  await page.getByRole("textbox", { name: "Top ID" }).fill("T-99");
  const thickness = page.getByRole("textbox", { name: /^Thickness/ });
  const about = await thickness.getAttribute("aria-describedby");
  expect(await page.locator(`#${about}`).textContent()).toBe("quantity: mean of five readings, before planing");
  await thickness.fill("3,9");
  await page.keyboard.press("Enter");
  await status("Added as row 72.");
  await expect.poll(at).toEqual([72, 1]);
  await page.keyboard.press("Control+z");
  await status("Undone, and saved.");
  expect(await page.getByRole("grid").getAttribute("aria-rowcount")).toBe("72");
  await page.getByRole("button", { name: "Redo" }).click();
  await status("Done again, and saved.");
  expect(await page.getByRole("grid").getAttribute("aria-rowcount")).toBe("73");
});

it("still has it all after it is opened anew, with the file as it was", async () => {
  expect(file().equals(before)).toBe(true);
  await page.reload();
  await page.getByRole("grid").waitFor();
  expect(await row(1).locator("th").textContent()).toContain("weighed wet");
  expect(await page.getByRole("grid").getAttribute("aria-rowcount")).toBe("73");
  await row(1).locator("th").click();
  await page.keyboard.press("Control+End");
  await expect.poll(() => row(72).textContent()).toContain("T-99");
});

it("writes into the file what was edited, every other line to the byte, and keeps the old one beside it", async () => {
  await page.getByText("edits are kept beside the file", { exact: false }).waitFor();
  await page.getByRole("button", { name: "Write into the file" }).click();
  await status("Written into records/tops.csv.");
  const after = file();
  expect(lines(after)).toBe(lines(before) + 1);
  for (let number = 1; number < lines(before); number++)
    expect(line(after, number)).toBe(line(before, number)?.replace("190.O", "160.1"));
  expect(line(after, 73)).toMatch(/^T-99,,,,,,,,"3,9",/);
  const others = readdirSync(join(folder, "records")).filter((name) => name !== "tops.csv");
  expect(others.some((name) => readFileSync(join(folder, "records", name)).equals(before))).toBe(true);
  await row(72).locator("th").click();
  await page.keyboard.press("Control+Home");
  expect(await row(1).locator("th").textContent()).toContain("weighed wet");
});

it("has said nothing against the policy of the page", () => expect(violations).toEqual([]));
