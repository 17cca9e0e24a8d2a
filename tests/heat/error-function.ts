/** exp(x²)·erfc(x), x >= 0: continued fraction from 2 on, Taylor series below (Abramowitz and Stegun 7.1.5, 7.1.14). */
export function erfcx(x: number): number {
  if (x < 2) return Math.exp(x * x) * (1 - erfSeries(x));
  let tail = x;
  for (let n = 200; n >= 1; n--) tail = x + n / 2 / tail;
  return 1 / (Math.sqrt(Math.PI) * tail);
}

export function erfc(x: number): number {
  return x < 0 ? 2 - erfc(-x) : Math.exp(-x * x) * erfcx(x);
}

function erfSeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < 80; n++) {
    term *= (-x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}
