// The accessibility checker on an element of a browser test.
import axe from "axe-core";

/** What the checker finds wrong: the rule and every element that breaks it. */
export const axeFaults = async (root: Element): Promise<string[]> =>
  (await axe.run(root)).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
