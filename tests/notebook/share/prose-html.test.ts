import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { proseHtml } from "../../../src/notebook/share/prose-html.ts";

it("writes headings, lists, emphasis, code and tables of the prose", () => {
  expect(
    proseHtml("# Tops\n\nSome *stiff* **tops** of `B-07`.\n\n1. one\n2. two\n\n| a | b |\n|---|---|\n| 1 | 2 |"),
  ).toBe(
    "<h2>Tops</h2><p>Some <em>stiff</em> <strong>tops</strong> of <code>B-07</code>.</p><ol><li><p>one</p></li><li><p>two</p></li></ol>" +
      '<table><thead><tr><th scope="col">a</th><th scope="col">b</th></tr></thead><tbody><tr><td>1</td><td>2</td></tr></tbody></table>',
  );
});

it("shows raw HTML as the text it is", () => {
  expect(proseHtml("<script>alert(1)</script>\n\nand <img src=x onerror=alert(1)> here")).toBe(
    "&lt;script&gt;alert(1)&lt;/script&gt;<p>and &lt;img src=x onerror=alert(1)&gt; here</p>",
  );
});

it.each([
  ["javascript:alert(1)"],
  ["JavaScript:alert(1)"],
  ["&#106;avascript:alert(1)"],
  ["java&#10;script:alert(1)"],
  ["data:text/html,x"],
  ["vbscript:x"],
  ["file:///etc/passwd"],
  ["//host/path"],
  ["\\\\host\\path"],
  ["&#1;javascript:alert(1)"],
])("keeps only the words of a link to %s", (address) => {
  const html = proseHtml(`[words](<${address}>)`, { insideLinks: true });
  expect(html).toBe("<p>words</p>");
});

it("keeps links to pages and letters, which take nothing of ours along", () => {
  const links = Array.from(
    parseHTML(proseHtml('[a](https://example.org/?a=1&b="2) [b](mailto:maker@example.org)')).document.querySelectorAll(
      "a",
    ),
  );
  expect(links.map((link) => link.getAttribute("href"))).toEqual([
    'https://example.org/?a=1&b="2',
    "mailto:maker@example.org",
  ]);
  expect(links.every((link) => link.getAttribute("rel") === "noopener noreferrer")).toBe(true);
});

it("keeps a link into the workspace only where it leads somewhere", () => {
  expect(proseHtml("[lab](wood-lab.md)", { insideLinks: true })).toContain('href="wood-lab.md"');
  expect(proseHtml("[lab](wood-lab.md)")).toBe("<p>lab</p>");
});

it("gives the words of an image, and fetches none", () => {
  expect(proseHtml('![the old balance](http://a/b.png "x")')).not.toMatch(/http|<img/);
});

it("ends on very deep and on odd prose", () => {
  for (const text of [">".repeat(5000), "- ".repeat(300), "[".repeat(3000), "*a ".repeat(3000), "\u0000\ufeff\u2028"])
    expect(typeof proseHtml(text)).toBe("string");
});
