import { expect, it } from "vitest";
import { createApp } from "../../src/server/create-app.ts";
import { POLICY } from "../../src/server/middleware/security-headers.ts";
import { digest } from "../../src/server/workspace/digest.ts";
import type { Workspace } from "../../src/server/workspace/workspace.ts";
import { samplePage } from "../support/sample-page.ts";

const PORT = 4321;
const bytes = (text: string) => new TextEncoder().encode(text);
const secrets = { token: "t".repeat(43), cookie: "c".repeat(43) };
const cookie = `thumbrule-${PORT}=${secrets.cookie}`;

/** A workspace of one notebook in memory. */
function shop() {
  const state = { text: "before", logged: [] as string[], saves: 0 };
  const workspace: Workspace = {
    notebooks: async () => [{ file: "tops.md", title: "Tops", written: null }],
    read: async (name) =>
      name === "tops.md" ? bytes(state.text) : name === "records/tops.csv" ? bytes("a,b\n1,2\n") : null,
    save: async (_, fresh, base) => {
      if (digest(bytes(state.text)) !== base) return { saved: false, because: "stale", theirs: bytes(state.text) };
      state.text = new TextDecoder().decode(fresh);
      state.saves++;
      return { saved: true, digest: digest(fresh) };
    },
    takeIn: async () => ({ taken: true }),
    descriptions: async () => [],
    compute: async (file, text) => {
      if (text === "our fault") throw new Error("secret path /home/x");
      return { ...samplePage(), file, text, digest: digest(bytes(text)) };
    },
    trace: async () => [],
    share: async ({ date }) => ({ name: `tops-${date}.html`, html: "<!doctype html>" }),
    records: {
      list: async () => [],
      page: async () => ({ done: false, because: "missing" }),
      edit: async () => ({ done: false, because: "held", holder: 77 }),
      write: async () => ({ done: false, because: "missing" }),
    },
    holder: async () => null,
    onChange: () => () => undefined,
    close: async () => undefined,
  };
  const files = new Map([
    [
      "/",
      { type: "text/html; charset=utf-8", bytes: bytes("<title>page</title>"), gzip: bytes("zipped"), lasting: false },
    ],
  ]);
  const app = createApp({
    workspace,
    files,
    port: PORT,
    secrets,
    log: (id) => void state.logged.push(id),
    faultId: () => "f-1",
  });
  const ask = async (path: string, init: RequestInit & { headers?: Record<string, string> } = {}) =>
    app.fetch(
      new Request(`http://127.0.0.1:${PORT}${path}`, {
        ...init,
        headers: { host: `127.0.0.1:${PORT}`, cookie, ...init.headers },
      }),
    );
  const send = (method: string, path: string, body: unknown, headers: Record<string, string> = {}) =>
    ask(path, {
      method,
      body: typeof body === "string" ? body : JSON.stringify(body),
      headers: { "content-type": "application/json", ...headers },
    });
  return { state, app, ask, send };
}
const codeOf = async (answer: Response) =>
  ((await answer.json()) as { problems: { code: string }[] }).problems[0]?.code;

it.each(["evil.example", "127.0.0.1", `127.0.0.1:${PORT + 1}`, `127.0.0.1:${PORT}.evil.example`, ""])(
  "answers no other host name: %j",
  async (host) => {
    const answer = await shop().ask("/", { headers: { host } });
    expect(answer.status).toBe(421);
  },
);

it("answers no second host name, and no other place in the request line", async () => {
  const { app } = shop();
  const ask = (url: string, host: string, rawHeaders: readonly string[]) =>
    app.fetch(new Request(url, { headers: { host, cookie } }), { incoming: { rawHeaders } });
  const own = `127.0.0.1:${PORT}`;
  expect((await ask(`http://${own}/`, own, ["Host", own])).status).toBe(200);
  expect((await ask(`http://${own}/`, own, ["Host", own, "host", "evil.example"])).status).toBe(421);
  expect((await ask("http://evil.example/", own, ["Host", own])).status).toBe(421);
  expect((await ask("http://evil.example/", "evil.example", ["Host", "evil.example"])).status).toBe(421);
});

it.each(["http://evil.example", "null", "", `https://127.0.0.1:${PORT}`, `http://127.0.0.1:${PORT}/`])(
  "answers no other origin: %j",
  async (origin) => {
    expect((await shop().ask("/api/workspace", { headers: { origin } })).status).toBe(403);
  },
);

it("answers its own origin, and nothing that another site starts", async () => {
  expect((await shop().ask("/api/workspace", { headers: { origin: `http://127.0.0.1:${PORT}` } })).status).toBe(200);
  expect((await shop().ask("/api/workspace", { headers: { "sec-fetch-site": "cross-site" } })).status).toBe(403);
});

it("exchanges the start token for a cookie and takes it out of the address", async () => {
  const answer = await shop().ask(`/?token=${secrets.token}`, { headers: { cookie: "" } });
  expect(answer.status).toBe(303);
  expect(answer.headers.get("location")).toBe("/");
  expect(answer.headers.get("set-cookie")).toBe(`${cookie}; HttpOnly; SameSite=Strict; Path=/`);
  const wrong = await shop().ask("/?token=guess");
  expect([wrong.status, wrong.headers.get("set-cookie")]).toEqual([403, null]);
});

it.each(["", "a=b", cookie.slice(0, -1), `${cookie}x`, `${cookie}; ${cookie}`])(
  "gives no data to the cookie %j",
  async (given) => {
    expect((await shop().ask("/api/notebook/tops.md", { headers: { cookie: given } })).status).toBe(401);
  },
);

it("sets its headers on every answer, errors too", async () => {
  for (const answer of [
    await shop().ask("/"),
    await shop().ask("/nowhere"),
    await shop().ask("/", { headers: { host: "evil.example" } }),
    await shop().ask("/api/workspace", { headers: { cookie: "" } }),
  ]) {
    expect(answer.headers.get("content-security-policy")).toBe(POLICY);
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
    expect(answer.headers.get("x-frame-options")).toBe("DENY");
  }
});

it("serves the listed files and nothing else", async () => {
  expect((await shop().ask("/")).status).toBe(200);
  for (const path of ["/package.json", "/index.html", "/..%2fpackage.json", "/.git/HEAD"])
    expect((await shop().ask(path)).status).toBe(404);
});

it("takes no other method", async () => {
  for (const [method, path] of [
    ["DELETE", "/api/notebook/tops.md"],
    ["POST", "/"],
    ["OPTIONS", "/api/preview"],
    ["PATCH", "/nowhere"],
  ] as const)
    expect((await shop().ask(path, { method })).status).toBe(405);
});

it("saves a text that was based on the file, and answers with what it computes to", async () => {
  const { send, state } = shop();
  const answer = await send("PUT", "/api/notebook/tops.md", { text: "after", base: digest(bytes("before")) });
  expect(await answer.json()).toMatchObject({ file: "tops.md", text: "after", digest: digest(bytes("after")) });
  expect(state.text).toBe("after");
});

it("keeps both versions when the file was changed meanwhile", async () => {
  const { send, state } = shop();
  const answer = await send("PUT", "/api/notebook/tops.md", { text: "mine", base: digest(bytes("long ago")) });
  expect(answer.status).toBe(409);
  expect(await answer.json()).toMatchObject({
    problems: [{ code: "stale-edit" }],
    yours: "mine",
    theirs: { text: "before" },
  });
  expect(state.text).toBe("before");
});

it.each([
  ["[", "not-json"],
  ["null", "wrong-shape"],
  ["[]", "wrong-shape"],
  ['{"text":"a"}', "wrong-shape"],
  ['{"text":"a","base":"b"}', "wrong-shape"],
  [`{"text":"a","base":"${"0".repeat(64)}","more":1}`, "wrong-shape"],
  ['{"__proto__":{"polluted":1}}', "wrong-shape"],
  ["[".repeat(100_000), "not-json"],
  [`{"text":"\\ud800","base":"${"0".repeat(64)}"}`, "wrong-shape"],
])("refuses the body %.40s", async (body, code) => {
  const { send, state } = shop();
  const answer = await send("PUT", "/api/notebook/tops.md", body);
  expect(answer.status).toBeGreaterThanOrEqual(400);
  expect(await codeOf(answer)).toBe(code);
  expect(state.saves).toBe(0);
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
});

it("refuses a body that is not JSON by its type, or larger than the limit", async () => {
  expect((await shop().send("POST", "/api/preview", "{}", { "content-type": "text/plain" })).status).toBe(415);
  expect(
    (await shop().send("POST", "/api/preview", "{}", { "content-type": "application/json; charset=utf-16" })).status,
  ).toBe(415);
  expect((await shop().send("POST", "/api/preview", `"${"a".repeat(9 * 1024 * 1024)}"`)).status).toBe(413);
});

it.each(["..%2fsecret.md", "%2e%2e%2fsecret.md", "a%5cb.md", "a%00.md", ".hidden.md", "con.md", "tops.js", "%zz"])(
  "reads no notebook named %s",
  async (name) => {
    expect((await shop().ask(`/api/notebook/${name}`)).status).toBe(404);
  },
);

it("previews without writing", async () => {
  const { send, state } = shop();
  const answer = await send("POST", "/api/preview", { file: "tops.md", text: "draft", dials: [["target", 9]] });
  expect(await answer.json()).toMatchObject({ text: "draft" });
  expect([state.text, state.saves]).toEqual(["before", 0]);
});

it("gives a record table as bytes to keep, not to show", async () => {
  const answer = await shop().ask("/api/table/records%2Ftops.csv");
  expect(await answer.text()).toBe("a,b\n1,2\n");
  expect(answer.headers.get("content-disposition")).toBe("attachment");
});

it("needs a date for a dated copy", async () => {
  const { send } = shop();
  expect(await codeOf(await send("POST", "/api/share", { file: "tops.md", date: "2026-02-30", without: [] }))).toBe(
    "date-missing",
  );
  const answer = await send("POST", "/api/share", { file: "tops.md", date: "2026-03-14", without: [] });
  expect(answer.headers.get("content-disposition")).toBe("attachment; filename*=UTF-8''tops-2026-03-14.html");
});

it("lives on after a fault of ours, and says its id but not its inside", async () => {
  const { send, ask, state } = shop();
  const answer = await send("POST", "/api/preview", { file: "tops.md", text: "our fault", dials: [] });
  expect(answer.status).toBe(500);
  expect(await answer.text()).not.toContain("secret");
  expect(state.logged).toEqual(["f-1"]);
  expect((await ask("/api/workspace")).status).toBe(200);
});
