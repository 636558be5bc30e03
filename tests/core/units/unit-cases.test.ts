// Units and pitch against worked cases from outside (tests/reference/physics/SOURCES.md says where they come from).
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import {
  centsBetween,
  fromSi,
  noteFromFrequency,
  pitchFromText,
  toSi,
  unitFromText,
} from "../../../src/core/units/index.ts";
import { closeTo } from "../../support/close-to.ts";

type Value = { readonly value: number | string; readonly unit: string; readonly tolerance_relative?: number };
type Case = {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Record<string, Value>;
  readonly expected: Record<string, Value>;
};
const cases: Case[] = JSON.parse(
  readFileSync(new URL("../../reference/physics/unit-cases.json", import.meta.url), "utf8"),
);
const unit = (text: string) => {
  const found = unitFromText(text);
  if (!found) throw new Error(`no unit ${text}`);
  return found;
};
const number = (values: Record<string, Value>, name: string) => Number(values[name]?.value);
const SHARP: Record<string, string> = { Ab2: "G#2" };

const checks: Record<string, (one: Case) => void> = {
  unit_conversion: ({ inputs, expected }) =>
    closeTo(
      fromSi(toSi(number(inputs, "x"), unit(inputs.x?.unit ?? "")), unit(expected.x?.unit ?? "")),
      number(expected, "x"),
      1e-8,
    ),
  note_to_frequency: ({ inputs, expected }) =>
    closeTo(
      pitchFromText(String(inputs.note?.value), number(inputs, "A4"))?.frequency ?? 0,
      number(expected, "f"),
      1e-8,
    ),
  frequency_to_note_and_cents: ({ inputs, expected }) => {
    const { note, cents } = noteFromFrequency(number(inputs, "f"), number(inputs, "A4"));
    const wanted = String(expected.note?.value);
    expect(note).toBe(SHARP[wanted] ?? wanted);
    closeTo(cents, number(expected, "cents"), 1e-6, { scale: 1 });
  },
  interval_cents: ({ inputs, expected }) =>
    closeTo(centsBetween(number(inputs, "f1"), number(inputs, "f2")), number(expected, "cents"), 1e-8),
};
it.each(cases.map((one) => [one.id, one.quantity, one] as const))("%s %s", (_, quantity, one) =>
  checks[quantity]?.(one),
);
it("has a check for each quantity", () =>
  expect(new Set(cases.map((one) => one.quantity))).toEqual(new Set(Object.keys(checks))));
