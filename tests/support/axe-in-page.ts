// The accessibility checker in a page of a journey.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What the checker finds wrong in the page as it stands: the rule and the first element that breaks it. */
export async function axeInPage(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate(() =>
    (
      window as unknown as {
        axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      }
    ).axe.run(),
  );
  return found.violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html.slice(0, 200)}`);
}
