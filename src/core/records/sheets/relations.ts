// Which part of an XLSX file another part means by an id. Source: ECMA-376 part 2, 6.5.
import { MarkupReader } from "./markup-reader.ts";
import type { WorkbookParts } from "./workbook-parts.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

/** `type`: the last word of the relation's type; `part`: the name of the part that is meant, null where it lies outside the file. */
export type Relation = { readonly type: string; readonly part: string | null };

/** The name of the part that a target means, seen from a folder. */
function partName(folder: string, target: string): string {
  const names = (target.startsWith("/") ? "" : folder).split("/").filter((name) => name !== "");
  for (const name of target.split("/")) {
    if (name === "..") names.pop();
    else if (name !== ".") names.push(name);
  }
  return names.filter((name) => name !== "").join("/");
}

/** The relations of a part by id; none where it has no list of them. `owner`: the part, "" for the file as a whole. */
export async function relations(
  parts: WorkbookParts,
  owner: string,
): Promise<ReadonlyMap<string, Relation> | WorkbookTrouble> {
  const slash = owner.lastIndexOf("/") + 1;
  const folder = owner.slice(0, slash);
  const list = `${folder}_rels/${owner.slice(slash)}.rels`;
  const found = new Map<string, Relation>();
  if (!parts.has(list)) return found;
  const source = await parts.text(list);
  if (typeof source === "string") return source;
  const reader = new MarkupReader(source.text);
  for (let step = reader.next(); step !== "end"; step = reader.next()) {
    if (step !== "open" || reader.name !== "Relationship") continue;
    const type = reader.attribute("Type") ?? "";
    const isOutside = reader.attribute("TargetMode") === "External";
    found.set(reader.attribute("Id") ?? "", {
      type: type.slice(type.lastIndexOf("/") + 1),
      part: isOutside ? null : partName(folder, reader.attribute("Target") ?? ""),
    });
  }
  return reader.trouble ?? found;
}
