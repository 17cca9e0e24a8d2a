import type { SheetProperties } from './sheet-properties.ts';

/**
 * Austenitic stainless steel by EN 1993-1-2:2005, annex C (from memory), density 7850 kg/m³.
 *
 * Made for 20 to 1200 °C; below, the value at 20 °C is kept. Ferritic stainless sheet conducts nearly twice as
 * well when cold (about 25 against 15 W/(m·K), from memory); for it take carbon steel, which errs high.
 */
export const stainlessSteel: SheetProperties = {
  density: 7850,
  conductivity: (celsius) => 14.6 + 1.27e-2 * Math.max(20, celsius),
  heatCapacity: (celsius) => heatCapacity(Math.max(20, celsius)),
  enthalpy: (celsius) => {
    const t = Math.max(20, celsius);
    return (
      t * (450 + t * (0.28 / 2 + t * (-2.91e-4 / 3 + (t * 1.34e-7) / 4))) + heatCapacity(20) * (celsius - t)
    );
  },
};

const heatCapacity = (t: number): number => 450 + t * (0.28 + t * (-2.91e-4 + t * 1.34e-7));
