// Every kind of entry, in the order in which they are shown. A new kind is a folder and a line here.
import type { EntryKindId } from "../../language/index.ts";
import type { EntryKind } from "../entry-kind.ts";
import { columns } from "./columns/columns.ts";
import { dial } from "./dial/dial.ts";
import { lexicon } from "./lexicon/lexicon.ts";
import { picture } from "./picture/picture.ts";
import { question } from "./question/question.ts";
import { records } from "./records/records.ts";
import { rig } from "./rig/rig.ts";
import { rule } from "./rule/rule.ts";
import { setting } from "./setting/setting.ts";
import { use } from "./use/use.ts";
import { value } from "./value/value.ts";

export const entryKinds: { readonly [K in EntryKindId]: EntryKind & { readonly id: K } } = {
  records,
  columns,
  value,
  dial,
  question,
  rule,
  rig,
  picture,
  lexicon,
  use,
  setting,
};
