import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { openWorkspace, type WorkspaceOptions } from "../../../src/server/workspace/open-workspace.ts";
import type { Workspace } from "../../../src/server/workspace/workspace.ts";

const text =
  "---\ntitle: Tops\nwritten: 2026-03-14\n---\nProse.\n\n```records tops\nfrom records/tops.csv\n```\n\n```dial extra\n1 mm from 0 mm to 4 mm\n```\n\n```value twice\n2 * extra    in mm\n```\n";
const options: WorkspaceOptions = {
  version: "0.0.0",
  watch: false,
  draw: () => ({ tag: "svg", attributes: [], children: [] }),
  share: async () => ({ name: "a.html", html: "" }),
};
let folder = "";
let shop: Workspace;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "shop-"));
  mkdirSync(join(folder, "records"));
  writeFileSync(join(folder, "tops.md"), text);
  writeFileSync(join(folder, "README.md"), "# Not a notebook");
  writeFileSync(join(folder, "records", "tops.csv"), "top_id,thickness (mm)\nT-1,2.4\nT-2,2.6\n");
  shop = openWorkspace(folder, options);
});
afterEach(async () => {
  await shop.close();
  rmSync(folder, { recursive: true });
});

it("lists the notebooks of the folder by title", async () => {
  expect(await shop.notebooks()).toEqual([{ file: "tops.md", title: "Tops", written: "2026-03-14" }]);
});

it("computes a notebook, and says where each part stands in its text", async () => {
  const page = await shop.compute("tops.md", text, new Map());
  expect(page.result.entries.map((entry) => [entry.name, entry.view.kind])).toEqual([
    ["tops", "table"],
    ["extra", "slider"],
    ["twice", "amount"],
  ]);
  const bodies = page.parts.flatMap((part) =>
    part.is === "entry" ? [page.text.slice(part.from, part.to).trim()] : [],
  );
  expect(bodies).toEqual(["from records/tops.csv", "1 mm from 0 mm to 4 mm", "2 * extra    in mm"]);
});

const amount = async (dials: ReadonlyMap<string, number>, notebook = text) => {
  const view = (await shop.compute("tops.md", notebook, dials)).result.entries.find(
    ({ name }) => name === "twice",
  )?.view;
  return view?.kind === "amount" ? view.value : view;
};

it("follows a dial, and forgets it when the next request does not turn it", async () => {
  expect(await amount(new Map())).toBe(2);
  expect(await amount(new Map([["extra", 3]]))).toBe(6);
  expect(await amount(new Map())).toBe(2);
});

it("answers several requests for one notebook each with its own text", async () => {
  const texts = [1, 2, 3].map((n) => text.replace("1 mm from", `${n} mm from`));
  expect(await Promise.all(texts.map((each) => amount(new Map(), each)))).toEqual([2, 4, 6]);
});

it("writes what was saved into the file", async () => {
  const { digest } = await shop.compute("tops.md", text, new Map());
  expect((await shop.save("tops.md", new TextEncoder().encode("new"), digest)).saved).toBe(true);
  expect(readFileSync(join(folder, "tops.md"), "utf8")).toBe("new");
});
