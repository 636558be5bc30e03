// A save on a disk that fails, fills up or loses its program at any one operation: old bytes or new bytes, never a mixture.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { writeWhole } from "../../src/cli/write-whole.ts";
import { createApp } from "../../src/server/create-app.ts";
import { digest } from "../../src/server/workspace/digest.ts";
import { openWorkspace } from "../../src/server/workspace/open-workspace.ts";
import { saveFile } from "../../src/server/workspace/save-file.ts";
import { FAULTS, faultyFiles } from "./faulty-files.ts";

const old = "old text, é and 𝄞\r\n".repeat(900);
const fresh = "new text\n".repeat(1700);
const bytes = (text: string) => new TextEncoder().encode(text);
let folder = "";
let path = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "faults-"));
  path = join(folder, "a.md");
  writeFileSync(path, old);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const held = () => {
  const text = readFileSync(path, "utf8");
  return text === old ? "old" : text === fresh ? "new" : `a mixture of ${text.length}`;
};
/** What lies there beside the file and the service's lock. */
const beside = () => readdirSync(folder).filter((name) => name !== "a.md" && name !== ".thumbrule.lock");

type Disk = ReturnType<typeof faultyFiles>["disk"];
const writers: Record<string, (disk: Disk) => Promise<boolean>> = {
  "a save of the service": async (disk) => (await saveFile(path, bytes(fresh), digest(bytes(old)), disk)).saved,
  "a file of the command line": async (disk) => (await writeWhole(path, fresh, disk)).ok,
};
const each = Object.keys(writers);
const written = (writer: string, disk: Disk) => writers[writer]!(disk);

async function whole(writer: string): Promise<readonly string[]> {
  const sound = faultyFiles(0, "EIO");
  expect(await written(writer, sound.disk)).toBe(true);
  expect([held(), beside()]).toEqual(["new", []]);
  return sound.begun;
}

it.each(each.flatMap((writer) => FAULTS.map((fault) => [writer, fault] as const)))(
  "%s is old or new as a whole, whichever operation meets %s",
  async (writer, fault) => {
    const begun = await whole(writer);
    for (let n = 1; n <= begun.length; n++) {
      writeFileSync(path, old);
      const { disk, killed, release } = faultyFiles(n, fault);
      const said = await Promise.race([written(writer, disk), killed]);
      const where = `${n}: ${begun[n - 1]}`;
      const renamed = begun.indexOf("rename") + 1;
      const now = n > renamed || (n === renamed && fault === "killed after") || said === true ? "new" : "old";
      expect([where, held()]).toEqual([where, now]);
      expect([where, said]).toEqual([where, fault === "short write" ? true : fault.startsWith("killed") && "killed"]);
      expect(beside().length, where).toBeLessThanOrEqual(said === "killed" ? 1 : 0);
      for (const name of beside()) rmSync(join(folder, name));
      await release();
    }
  },
);

it.each(each)(
  "%s is flushed before it takes the old name, and its folder before it is said to be saved",
  async (writer) => {
    const begun = (await whole(writer)).filter((name) => ["write", "writeFile", "sync", "rename"].includes(name));
    expect(begun.map((name) => name.slice(0, 5))).toEqual(["write", "sync", "renam", "sync"]);
  },
);

it.each(each)("%s is not said to be saved while a flush has not returned", async (writer) => {
  const begun = await whole(writer);
  for (const n of begun.flatMap((name, at) => (name === "sync" ? [at + 1] : []))) {
    writeFileSync(path, old);
    const { disk, killed, release } = faultyFiles(n, "killed before");
    let said = false;
    void written(writer, disk).then(() => {
      said = true;
    });
    await killed;
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(said).toBe(false);
    for (const name of beside()) rmSync(join(folder, name));
    await release();
  }
});

const PORT = 4321;
const secrets = { token: "t".repeat(43), cookie: "c".repeat(43) };
function service() {
  const workspace = openWorkspace(folder, {
    version: "0.0.0",
    watch: false,
    draw: () => ({ tag: "svg", attributes: [], children: [] }),
    share: async () => ({ name: "a.html", html: "" }),
  });
  const app = createApp({ workspace, files: new Map(), port: PORT, secrets, log: () => undefined, faultId: () => "f" });
  const put = async (text: string, base: string) =>
    app.fetch(
      new Request(`http://127.0.0.1:${PORT}/api/notebook/a.md`, {
        method: "PUT",
        body: JSON.stringify({ text, base: digest(bytes(base)) }),
        headers: {
          host: `127.0.0.1:${PORT}`,
          cookie: `thumbrule-${PORT}=${secrets.cookie}`,
          "content-type": "application/json",
        },
      }),
    );
  return { put, close: workspace.close };
}

it("has the edit on the disk when it acknowledges it", async () => {
  const { put, close } = service();
  const answer = await put(fresh, old);
  expect([answer.status, held(), beside()]).toEqual([200, "new", []]);
  await close();
});

it("answers a stale edit with both versions, and leaves the file", async () => {
  const { put, close } = service();
  writeFileSync(path, fresh);
  const answer = await put("mine", old);
  expect(answer.status).toBe(409);
  expect(await answer.json()).toMatchObject({
    problems: [{ code: "stale-edit" }],
    yours: "mine",
    theirs: { text: fresh, digest: digest(bytes(fresh)) },
  });
  expect([held(), beside()]).toEqual(["new", []]);
  await close();
});

it("keeps one of several edits of one text sent at once, and tells the others", async () => {
  const { put, close } = service();
  const texts = ["one", "two", "three", "four"];
  const answers = await Promise.all(texts.map((text) => put(text, old)));
  const kept = texts.filter((_, at) => answers[at]?.status === 200);
  expect(answers.map(({ status }) => status).sort()).toEqual([200, 409, 409, 409]);
  expect([readFileSync(path, "utf8")]).toEqual(kept);
  await close();
});

it("says that it did not save when the file is gone", async () => {
  const { put, close } = service();
  rmSync(path);
  const answer = await put(fresh, old);
  expect(answer.ok).toBe(false);
  expect(readdirSync(folder)).toEqual([]);
  await close();
});
