import type { ComponentChildren } from "preact";

/** A wide table's frame: it scrolls by keys too, and its name says what is in it. */
export const ScrollBox = ({ label, children }: { readonly label: string; readonly children: ComponentChildren }) => (
  // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and a section would be one landmark for each table
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard (WCAG 2.1.1)
  <div class="scroll-box" role="group" aria-label={label} tabIndex={0}>
    {children}
  </div>
);
