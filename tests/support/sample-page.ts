// The sample notebook as its page: the file's text, and where each part stands in it.
import type { Drawing, ProseNode } from "../../src/core/base/index.ts";
import type { PageData, PagePart } from "../../src/notebook/share/index.ts";
import { sampleResult } from "./sample-result.ts";

const prose: readonly ProseNode[] = [
  {
    is: "paragraph",
    children: [
      { is: "text", text: "Every top is planed until it " },
      { is: "emphasis", children: [{ is: "text", text: "feels right" }] },
      { is: "text", text: "." },
    ],
  },
];

/** A page with pictures drawn by `draw`; without it none are drawn. */
export function samplePage(draw: (picture: never) => Drawing | null = () => null): PageData {
  let text = "---\ntitle: Do stiffer tops end up thinner?\n---\n";
  const parts: PagePart[] = [];
  for (const part of sampleResult.parts) {
    if (part.is === "prose") {
      parts.push({ is: "prose", from: text.length, to: text.length + part.text.length, prose });
      text += part.text;
    } else {
      const entry = sampleResult.entries.find(({ name }) => name === part.name)!;
      text += `\n\`\`\`${entry.kind} ${entry.name}\n`;
      const { view } = entry;
      const picture = view.kind === "answer" && view.finding.kind !== "refused" ? view.finding.picture : undefined;
      parts.push({
        is: "entry",
        from: text.length,
        to: text.length + entry.asked.length,
        name: entry.name,
        drawing: picture === undefined ? null : draw(picture as never),
      });
      text += `${entry.asked}\n\`\`\`\n`;
    }
  }
  return { file: "tops.md", text, digest: "0".repeat(64), result: sampleResult, parts };
}
