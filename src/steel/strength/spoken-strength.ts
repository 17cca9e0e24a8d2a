/**
 * The most that a whole figure in ksi or kgf/mm² may stand for, in its own unit. Steps of five are rounded: 980 MPa is 142.1 ksi and
 * spoken "140 ksi". Other figures have lost their decimals: 590 MPa is 85.6 ksi. Common practice; MPa are said as they are ordered.
 */
export function spokenUpTo(figure: number): number {
  return figure + (figure % 5 === 0 ? 2.49 : 0.99);
}
