/**
 * The name of a bending shape by its nodal lines: twist, long1, long2 … (bending along the grain only), cross1 … (across only), and a1l2 for one nodal line
 * along the grain and two across it. along, across: degrees of the shape each way.
 */
export function modeName(along: number, across: number): string {
  if (along === 1 && across === 1) return "twist";
  if (across === 0) return `long${along - 1}`;
  if (along === 0) return `cross${across - 1}`;
  return `a${across}l${along}`;
}
