import { noncentralTUpperTail } from "./noncentral-t-upper-tail.ts";

/** Lower tail of the noncentral t law: P(T < t; ncp) = P(T > -t; -ncp). Arguments and accuracy as noncentralTUpperTail. */
export const noncentralTLowerTail = (t: number, degreesOfFreedom: number, noncentrality: number): number =>
  noncentralTUpperTail(-t, degreesOfFreedom, -noncentrality);
