/**
 * Sum of many terms without the usual loss of digits (Neumaier's form of Kahan's compensated sum).
 * terms: any finite numbers. Returns their sum, relative error about 2e-16 unless the terms cancel; 0 for none.
 * Source: A. Neumaier (1974), Z. angew. Math. Mech. 54, 39-51; N. J. Higham (2002), Accuracy and Stability, section 4.3.
 * @example compensatedSum([1e16, 1, -1e16]) // 1
 */
export function compensatedSum(terms: ArrayLike<number>): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < terms.length; i++) {
    const term = terms[i] as number;
    const next = sum + term;
    lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
    sum = next;
  }
  return sum + lost;
}
