// A maker at the command line, from records to a copy that the apprentice checks. Runs what `npm run build` made.
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "thumbrule-journey-"));
  cpSync("notebooks", folder, { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const thumbrule = (...words: string[]) => {
  const run = spawnSync(process.execPath, ["dist/node/thumbrule.js", ...words], { encoding: "utf8", timeout: 60_000 });
  return { status: run.status, out: run.stdout, says: run.stderr };
};
const json = (text: string) => JSON.parse(text) as Record<string, unknown>;

type Relation = {
  kind: string;
  estimate: { value: number; low: number; high: number; unit: string }[];
  rows: { used: unknown[]; setAside: unknown[] };
  method: { source: { citation: string } };
  cautions: unknown[];
};
type Reported = { entries: { name: string; kind: string; finding?: Relation }[] };

it("reports a relation with estimate, interval, rows used and set aside, cautions and method", () => {
  const run = thumbrule("report", join(folder, "stiffer-tops.md"), "--json");
  expect(run.says).toBe("");
  expect(run.status).toBe(0);
  const report = json(run.out) as unknown as Reported;
  const relation = report.entries.find((entry) => entry.finding?.kind === "relation")?.finding;
  const estimate = relation?.estimate[0];
  if (!relation || !estimate) throw new Error("no relation was answered");
  expect(estimate.low).toBeLessThan(estimate.value);
  expect(estimate.value).toBeLessThan(estimate.high);
  expect(estimate.unit).toBe("mm/GPa");
  expect(relation.rows.used.length).toBeGreaterThan(20);
  expect(relation.rows.setAside.length).toBeGreaterThan(0);
  expect(relation.method.source.citation).not.toBe("");
  expect(Array.isArray(relation.cautions)).toBe(true);
});

it("asks one question without a notebook", () => {
  const run = thumbrule("ask", "mass across species", "--records", join(folder, "records/tops.csv"), "--json");
  expect(run.status).toBe(0);
  expect((json(run.out).finding as { kind: string }).kind).toBe("comparison");
});

it("names the place of a misspelt column and still answers the other entries", () => {
  const file = join(folder, "misspelt.md");
  const text = readFileSync(join(folder, "stiffer-tops.md"), "utf8");
  const line = text.split("\n").findIndex((each) => each.startsWith("final_thickness against")) + 1;
  writeFileSync(
    file,
    text.replace("final_thickness against stiffness_along", "final_thickness against stifness_along"),
  );
  const check = thumbrule("check", file, "--json");
  expect(check.status).toBe(1);
  const found = (json(check.out).problems as { line: number; code: string; suggestion?: string }[]).find(
    (each) => each.line === line,
  );
  expect(found?.code).toBe("unknown-column");
  expect(found?.suggestion).toContain("stiffness_along");
  const report = json(thumbrule("report", file, "--json").out) as unknown as Reported;
  expect(report.entries.filter((entry) => entry.finding).length).toBeGreaterThan(1);
});

it("says a file that is missing, an empty one and mm added to GPa, each with its code and place", () => {
  const write = (name: string, body: string) => {
    writeFileSync(join(folder, name), `---\ntitle: Trouble\n---\n\n${body}\n`);
    return json(thumbrule("check", join(folder, name), "--json").out).problems as { code: string; line: number }[];
  };
  const records = (file: string) => "```records tops\nfrom " + file + "\n```\n";
  writeFileSync(join(folder, "records/empty.csv"), "");
  expect(write("gone.md", records("records/gone.csv"))[0]?.code).toBe("missing-file");
  expect(write("empty.md", records("records/empty.csv"))[0]?.code).toBe("empty-file");
  expect(write("sum.md", "```value odd\n2 mm + 3 GPa\n```\n")[0]).toMatchObject({ code: "wrong-dimension", line: 6 });
  expect(
    write("ring.md", "```value a\nb + 1 mm\n```\n\n```value b\na + 1 mm\n```\n").map((each) => each.code),
  ).toContain("ring");
});

it("shares the same bytes twice, and verify notices any one byte", () => {
  const [one, two] = [join(folder, "one.html"), join(folder, "two.html")];
  for (const file of [one, two])
    expect(thumbrule("share", join(folder, "stiffer-tops.md"), "--date", "2026-03-14", "-o", file).status).toBe(0);
  const bytes = readFileSync(one);
  expect(bytes.equals(readFileSync(two))).toBe(true);
  expect(thumbrule("verify", one).status).toBe(0);
  const places = [
    0,
    20,
    bytes.length >> 2,
    bytes.length >> 1,
    (bytes.length * 3) >> 2,
    bytes.length - 2,
    bytes.length - 1,
  ];
  for (const at of places) {
    const changed = Buffer.from(bytes);
    changed[at] = (changed[at] ?? 0) ^ 1;
    writeFileSync(two, changed);
    expect(thumbrule("verify", two).status, `byte ${at}`).toBe(1);
  }
});

it("ends with 2 for a command that does not exist", () => {
  expect(thumbrule("guess").status).toBe(2);
});
