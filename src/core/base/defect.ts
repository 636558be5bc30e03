/** Our own bug: thrown when code breaks a contract of ours, never for what a maker wrote. Caught once per entry and request. */
export class Defect extends Error {
  override readonly name = "Defect";
}
