/** Decimals that a workshop reads off its instruments; fewer are shown when the last ones are zeros. */
function usualDecimals(size: number, unit: string): number {
  switch (unit) {
    case '°C':
    case 'K':
    case 'MPa':
    case 'J':
    case 'J/cm²':
    case 'Ω/V':
      return 0;
    case 'mm':
      // Sheet comes in steps of 0.05 mm, body dimensions do not.
      return size < 10 ? 2 : 1;
    case 's':
      // Weld times are fractions of a second, holds and cures are not.
      return size < 1 ? 2 : size < 10 ? 1 : 0;
    case 'kN':
    case 'V':
      return size < 10 ? 2 : 1;
    case 'Ω':
      return size < 10 ? 3 : 0;
    case 'kA':
    case 'mm/s':
    case '°':
    case 'kg':
    case '%':
      return 1;
    default:
      return 2;
  }
}

/**
 * A number with its unit for a report: `600 °C`, `1.4 mm`, `15°`. No thousands mark and always a decimal point, so that
 * what is shown can be typed into a plan again. `digits` decimals at most, the usual number for the unit when left out.
 * Whether the rounded value still lies on the same side of a limit is the caller's concern: give more `digits` there.
 */
export function formatQuantity(value: number, unit: string, digits?: number): string {
  if (!Number.isFinite(value)) return 'unknown';
  const decimals = digits ?? usualDecimals(Math.abs(value), unit);
  const rounded = value.toFixed(decimals);
  const short = rounded.includes('.') ? rounded.replace(/\.?0+$/u, '') : rounded;
  const number = short === '-0' ? '0' : short;
  // Of all units only the degree of angle stands without a blank (SI brochure, 5.4.3).
  return unit === '°' ? `${number}°` : `${number} ${unit}`;
}
