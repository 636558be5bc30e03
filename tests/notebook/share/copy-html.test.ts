import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { copyFromEmbedded } from "../../../src/notebook/share/copy-from-embedded.ts";
import { htmlText } from "../../../src/notebook/share/html-text.ts";
import { digest, looks, oneReader, smallCopy, smallResult } from "./small-copy.ts";

const hostile = `</script><script>alert(1)</script><img src=x onerror=alert(1)>"><svg onload='alert(1)'></title></style>--><!--]]>&quot;\u2028\u0000\u202e$&javascript:alert(1)`;
const plain = (await copyFromEmbedded(smallCopy(), smallResult(), looks, digest)).html;
const attacked = (await copyFromEmbedded(smallCopy(hostile), smallResult(hostile), looks, digest)).html;

/** Names of all elements, in order. */
const elements = (html: string) =>
  Array.from(parseHTML(html).document.querySelectorAll("*"), (element) => element.localName);

it("has the same elements whatever the maker's text says", () => {
  expect(elements(attacked)).toEqual(elements(plain));
});

it("has no event attribute, no inline style, no address that loads by itself", () => {
  for (const html of [plain, attacked]) {
    const attributes = Array.from(parseHTML(html).document.querySelectorAll("*"), (element) =>
      Array.from(element.attributes),
    ).flat();
    expect(
      attributes.filter((attribute) =>
        /^(on|style$|src|srcset$|href$|xlink|ping|action|background)/i.test(attribute.name),
      ),
    ).toEqual([]);
  }
});

it("puts the policy first in the head, with hashes and nothing unsafe", () => {
  expect(plain).toMatch(
    /^<!doctype html>\n<html lang="en">\n<head>\n<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-[\w+/=]{44}'; style-src 'sha256-[\w+/=]{44}'; img-src data:; connect-src 'none'; base-uri 'none'; form-action 'none'/,
  );
  expect(plain).not.toContain("unsafe");
});

it("hashes the reader's script as it stands in the file", async () => {
  const script = /<script type="module">([\s\S]*?)<\/script>/.exec(plain)?.[1] ?? "";
  const hash = Buffer.from(await digest(new TextEncoder().encode(script)), "hex").toString("base64");
  expect(plain).toContain(`script-src 'sha256-${hash}'`);
});

it("keeps a script that speaks of script elements and comments inside its own element", async () => {
  const tricky = {
    ...looks,
    readerScripts: oneReader('const a = "</script><!--"; //# sourceMappingURL=x.js.map\n"$&";'),
  };
  const { html } = await copyFromEmbedded(smallCopy(), smallResult(), tricky, digest);
  expect(elements(html)).toEqual(elements(plain));
});

it("refuses a style that reaches outside", async () => {
  await expect(
    copyFromEmbedded(
      smallCopy(),
      smallResult(),
      { ...looks, readerStyle: "p{background:url(http://a/b.png)}" },
      digest,
    ),
  ).rejects.toThrow(RangeError);
});

it("is the same bytes twice", async () => {
  expect((await copyFromEmbedded(smallCopy(hostile), smallResult(hostile), looks, digest)).html).toBe(attacked);
});

it("reads without script: the sentence, the picture and the date stand in the page", () => {
  const body = plain.slice(plain.indexOf("<body"), plain.indexOf('<script type="application/json"'));
  for (const words of ["Thickness falls with stiffness.", "<svg", "2026-03-14", "thumbrule verify", "Some prose."])
    expect(body).toContain(words);
});

it("has no bracket, ampersand or line separator in the embedded data, so nothing in it can end it", () => {
  const data = /<script type="application\/json" id="thumbrule-data">(.*)<\/script>/.exec(attacked)?.[1] ?? "<";
  expect(data).not.toMatch(/[<>&\u2028\u2029]/);
});

it("escapes brackets, quotes and ampersands of text, and shows control characters as marks", () => {
  expect(htmlText(`<a href="x" id='y'>&\u0000\u007f\r\n`)).toBe(
    "&lt;a href=&quot;x&quot; id=&#39;y&#39;&gt;&amp;\u2400\u2421\n",
  );
});
