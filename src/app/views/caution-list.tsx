import type { Answer } from "../../core/base/index.ts";

/** Cautions as a list; nothing where there are none. */
export const CautionList = ({ cautions }: { readonly cautions: Answer["cautions"] }) =>
  cautions.length === 0 ? null : (
    <ul class="cautions" aria-label="Cautions">
      {cautions.map((caution, key) => (
        <li key={key} data-code={caution.code}>
          {caution.sentence}
        </li>
      ))}
    </ul>
  );
