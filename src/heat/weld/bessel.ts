/**
 * exp(x)·K0(x), the modified Bessel function of the second kind without its fall, for x > 0; NaN elsewhere.
 * M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 9.8.1, 9.8.5 and 9.8.6; error below 2e-7.
 */
export function scaledK0(x: number): number {
  if (!(x > 0)) return Number.NaN;
  if (x > 2) return polynomial(2 / x, farK0) / Math.sqrt(x);
  const q = (x / 2) ** 2;
  return Math.exp(x) * (-Math.log(x / 2) * polynomial((x / 3.75) ** 2, nearI0) + polynomial(q, nearK0));
}

/** exp(x)·K1(x) for x > 0; NaN elsewhere. Same source, 9.8.3, 9.8.7 and 9.8.8. */
export function scaledK1(x: number): number {
  if (!(x > 0)) return Number.NaN;
  if (x > 2) return polynomial(2 / x, farK1) / Math.sqrt(x);
  const q = (x / 2) ** 2;
  const i1 = x * polynomial((x / 3.75) ** 2, nearI1);
  return Math.exp(x) * (Math.log(x / 2) * i1 + polynomial(q, nearK1) / x);
}

const nearI0 = [1, 3.5156229, 3.0899424, 1.2067492, 0.2659732, 0.0360768, 0.0045813];
const nearI1 = [0.5, 0.87890594, 0.51498869, 0.15084934, 0.02658733, 0.00301532, 0.00032411];
const nearK0 = [-0.57721566, 0.4227842, 0.23069756, 0.0348859, 0.00262698, 0.0001075, 0.0000074];
const nearK1 = [1, 0.15443144, -0.67278579, -0.18156897, -0.01919402, -0.00110404, -0.00004686];
const farK0 = [1.25331414, -0.07832358, 0.02189568, -0.01062446, 0.00587872, -0.0025154, 0.00053208];
const farK1 = [1.25331414, 0.23498619, -0.0365562, 0.01504268, -0.00780353, 0.00325614, -0.00068245];

function polynomial(x: number, coefficients: readonly number[]): number {
  return coefficients.reduceRight((sum, one) => sum * x + one, 0);
}
