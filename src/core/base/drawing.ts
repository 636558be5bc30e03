/**
 * A drawn picture as plain data: one element with its attributes and what is inside it. It travels as JSON and is built up node by
 * node, so no markup is ever parsed in the page. Only tags and attributes on the page's own list are shown.
 */
export type Drawing = {
  readonly tag: string;
  readonly attributes: readonly (readonly [name: string, value: string])[];
  readonly children: readonly (Drawing | string)[];
};
