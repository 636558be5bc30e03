/** A rectangular plate of wood: length a along the grain and width b across it in m, density in kg/m3, moduli in Pa, Poisson ratio nu_LR. */
export type Plate = {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly density: number;
  readonly along: number;
  readonly across: number;
  readonly shear: number;
  readonly poisson: number;
};
