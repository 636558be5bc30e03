import { expect, it } from "vitest";
import { escaped } from "../../src/cli/escaped.ts";

it("shows what could move the cursor, turn the direction or clear the screen", () => {
  expect(escaped("a\u001b[2Jb\u202ec\u0007")).toBe("a\\u001b[2Jb\\u202ec\\u0007");
});
it("leaves lines, tabs and the maker's own letters", () => expect(escaped("Fichte\tß\n½ in")).toBe("Fichte\tß\n½ in"));
it("keeps all that stands before, between and after the marks", () =>
  expect(escaped("\u0000a\u009bb\ufeff")).toBe("\\u0000a\\u009bb\\ufeff"));
