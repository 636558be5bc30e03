// What to show for an entry: a small closed set, one component each. Plain JSON, so it travels from server to page and into the copy.
import type { Finding } from "./finding.ts";
import type { Picture } from "./picture.ts";
import type { Problem } from "./problems.ts";
import type { Trace } from "./trace.ts";

/** A cell as the grid shows it: raw text beside its reading; `warning`: what reading says of it, in words. */
export type GridCell = { readonly raw: string; readonly reading: string; readonly warning?: string };

export type GridColumn = {
  readonly name: string;
  readonly header: string;
  readonly kind: string;
  readonly unit: string;
  readonly uncertainty?: string;
  readonly warnings: number;
  /** Formula text of a computed column. */
  readonly formula?: string;
};

export type View =
  | { readonly kind: "answer"; readonly finding: Finding }
  | {
      readonly kind: "table";
      readonly caption: string;
      /** Record files that its columns stand in. */
      readonly files?: readonly string[];
      readonly columns: readonly GridColumn[];
      readonly rows: readonly {
        readonly piece: string;
        readonly row: number;
        readonly setAside?: string;
        readonly cells: readonly GridCell[];
      }[];
      readonly rowCount: number;
      readonly notes: readonly string[];
    }
  | { readonly kind: "picture"; readonly picture: Picture }
  | {
      readonly kind: "slider";
      readonly name: string;
      readonly value: number;
      readonly from: number;
      readonly to: number;
      readonly step: number;
      readonly unit: string;
    }
  | {
      readonly kind: "amount";
      readonly name: string;
      readonly formula: string;
      readonly amount: string;
      readonly value: number | null;
      readonly unit: string;
      readonly trace: Trace;
    }
  | { readonly kind: "prose"; readonly text: string }
  | { readonly kind: "problem"; readonly problems: readonly Problem[] };
