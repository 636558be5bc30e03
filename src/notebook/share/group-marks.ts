// How groups differ in a picture: by shape first, by colour besides. The colours are the page's own, by role.

export const GROUP_SHAPES = ["circle", "square", "triangle", "diamond", "cross", "star", "wye", "times"] as const;
export type GroupShape = (typeof GROUP_SHAPES)[number];
export type GroupMark = { readonly shape: GroupShape; readonly color: string };

/** The mark of the group at a place in the picture's list; after the eighth they repeat. Without groups: a circle in the ink of the first. */
export function groupMarks(index: number): GroupMark {
  const turn = Math.max(0, index) % GROUP_SHAPES.length;
  return { shape: GROUP_SHAPES[turn] ?? "circle", color: `var(--group-${turn + 1})` };
}
