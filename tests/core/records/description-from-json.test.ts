import { expect, it } from "vitest";
import { descriptionFromJson } from "../../../src/core/records/index.ts";

it("takes columns by header, and the answers about reading", () => {
  const text = '{"columns":{"Mass":{"unit":"g","uncertainty":{"value":0.2,"unit":"g"}}},"read":{"decimal":","}}';
  expect(descriptionFromJson(text)).toEqual({
    ok: true,
    value: { columns: { Mass: { unit: "g", uncertainty: { value: 0.2, unit: "g" } } }, read: { decimal: "," } },
  });
});
it("takes the fields of Table Schema as columns", () =>
  expect(
    descriptionFromJson('{"fields":[{"name":"Mass","type":"number","description":"as it came","unit":"g"}]}'),
  ).toEqual({ ok: true, value: { columns: { Mass: { unit: "g", meaning: "as it came" } } } }));
it("says where a description is not understood", () => {
  expect(descriptionFromJson("{")).toMatchObject({
    ok: false,
    refusal: { code: "description-not-understood", facts: { place: "" } },
  });
  expect(descriptionFromJson('{"columns":{"Mass":{"kind":"weight"}}}')).toMatchObject({
    ok: false,
    refusal: { facts: { place: "columns/Mass/kind" } },
  });
});
it.each([
  ['{"version":"999.0.0","columns":{}}', "version"],
  ['{"version":2}', "version"],
  ['{"version":[[1]]}', "version"],
  ['{"path":"../../outside.csv"}', "path"],
  ['{"resources":[{"path":"/etc/hostname"}]}', "resources"],
])("refuses a description of a later form, or of another file: %s", (text, place) =>
  expect(descriptionFromJson(text)).toMatchObject({
    ok: false,
    refusal: { code: "description-not-understood", facts: { place } },
  }),
);
it("takes a description that says it is of version 1", () =>
  expect(descriptionFromJson('{"version":1}')).toMatchObject({ ok: true }));
