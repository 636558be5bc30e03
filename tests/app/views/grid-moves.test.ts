import { expect, it } from "vitest";
import { gridMoves } from "../../../src/app/views/grid-moves.ts";

const size = { rows: 100_000, columns: 14, screen: 9 };
const from = { position: 50, col: 3 };
const press = (key: string, held: { ctrlKey?: true; metaKey?: true; altKey?: true; shiftKey?: true } = {}) =>
  gridMoves({ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...held }, from, size);

// ARIA Authoring Practices, "Keyboard Interaction For Data Grids".
it.each([
  ["ArrowRight", {}, { position: 50, col: 4 }],
  ["ArrowLeft", {}, { position: 50, col: 2 }],
  ["ArrowDown", {}, { position: 51, col: 3 }],
  ["ArrowUp", {}, { position: 49, col: 3 }],
  ["PageDown", {}, { position: 59, col: 3 }],
  ["PageUp", {}, { position: 41, col: 3 }],
  ["Home", {}, { position: 50, col: 0 }],
  ["End", {}, { position: 50, col: 14 }],
  ["Home", { ctrlKey: true }, { position: 0, col: 0 }],
  ["End", { metaKey: true }, { position: 99_999, col: 14 }],
] as const)("%s %o", (key, held, to) => expect(press(key, held)).toEqual(to));

it("leaves letters, and keys with Alt or Shift, to the browser", () =>
  expect([press("a"), press("ArrowLeft", { altKey: true }), press("End", { shiftKey: true })]).toEqual([
    null,
    null,
    null,
  ]));
