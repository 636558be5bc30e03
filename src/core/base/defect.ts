/** Our own bug: thrown when code breaks a contract of ours, never for what a maker wrote. Caught once per entry and request. */
// biome-ignore lint: a thrown value must be an Error to carry a stack, and Error can only be extended by a class
export class Defect extends Error {
  override readonly name = "Defect";
}
