import fc from "fast-check";
import { expect, it } from "vitest";
import { descriptionFromJson } from "../../../src/core/records/description-from-json.ts";
import { descriptionWithAnswers } from "../../../src/core/records/description-with-answers.ts";
import { jsonWithMember } from "../../../src/core/records/json-with-member.ts";
import { law } from "../../support/law.ts";

const written = (text: string | null, answers: Parameters<typeof descriptionWithAnswers>[1]) => {
  const outcome = descriptionWithAnswers(text, answers);
  return outcome.ok ? outcome.value : outcome.refusal.code;
};

it("begins a description with the answers and the names of the columns", () => {
  const text = written(null, { read: { decimal: "," }, fields: ["Piece", "Mass"] });
  expect(JSON.parse(text)).toEqual({ read: { decimal: "," }, fields: [{ name: "Piece" }, { name: "Mass" }] });
  expect(text.endsWith("}\n")).toBe(true);
});

it("keeps everything else of a description to the byte", () => {
  const before = '\ufeff{\r\n\t"columns" : { "Mass":  {"meaning": "as it came"} },\r\n\t"mine": [1,  2]\r\n}';
  expect(written(before, { read: { dayFirst: true }, fields: [] })).toBe(
    '\ufeff{\r\n\t"columns" : { "Mass":  {"meaning": "as it came"} },\r\n\t"mine": [1,  2],\r\n\t"read": {\r\n\t\t"dayFirst": true\r\n\t}\r\n}',
  );
});

it("replaces an earlier answer where it stands, and takes back one that was withdrawn", () => {
  const before = '{ "read": { "decimal": "." , "dayFirst":true }, "title": "Tops" }\n';
  expect(written(before, { read: { decimal: "," }, fields: [] })).toBe(
    '{ "read": {"decimal":","}, "title": "Tops" }\n',
  );
});

it("leaves a file that says the same already as it is written", () => {
  const before = '{"read" : {  "decimal":"," }}';
  expect(written(before, { read: { decimal: "," }, fields: ["Mass"] })).toBe(before);
  expect(written("{}", { read: {}, fields: ["Mass"] })).toBe("{}");
});

it("keeps column names that objects know as ordinary names", () => {
  const aliases = JSON.parse('{ "__proto__": { "ceder": "cedar" } }') as Record<string, Record<string, string>>;
  const outcome = descriptionFromJson(written("{}", { read: { aliases }, fields: [] }));
  expect(outcome.ok && JSON.stringify(outcome.value.read)).toBe('{"aliases":{"__proto__":{"ceder":"cedar"}}}');
});

it.each(["", "[]", '{"read": {"decimal": ";"}}', '{"version": 2}', "{'read': 1}"])(
  "does not write over what it does not understand: %s",
  (before) => {
    expect(written(before, { read: { decimal: "," }, fields: [] })).toBe("description-not-understood");
  },
);

it("sets the member that counts where a key stands twice", () => {
  expect(jsonWithMember('{"a":1,"a":2}', "a", 3)).toBe('{"a":1,"a":3}');
});

const spaced = fc.tuple(fc.dictionary(fc.string(), fc.jsonValue(), { maxKeys: 5 }), fc.constantFrom(0, 1, 2, "\t"));
law("sets one member and leaves every other", [spaced, fc.string(), fc.jsonValue()], ([object, space], key, value) => {
  const after = jsonWithMember(JSON.stringify(object, null, space), key, value);
  const entries = (json: unknown) => new Map(Object.entries(json as object));
  const [all, before] = [entries(JSON.parse(after)), entries(JSON.parse(JSON.stringify(object)))];
  expect(all.get(key)).toEqual(JSON.parse(JSON.stringify(value)));
  expect([...all.keys()].filter((name) => name !== key)).toEqual([...before.keys()].filter((name) => name !== key));
  for (const [name, each] of before) if (name !== key) expect(all.get(name)).toEqual(each);
});
