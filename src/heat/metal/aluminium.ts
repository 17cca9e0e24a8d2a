import type { SheetProperties } from './sheet-properties.ts';

/**
 * Wrought aluminium by EN 1999-1-2, 3.3, with the conductivity of the 3xxx and 6xxx alloys (from memory). Of the
 * two curves of that standard it is the better conductor, so 5xxx and 7xxx sheet comes out hotter than it is.
 *
 * Made for 20 to 500 °C; outside, the value at the end of the range is kept.
 */
export const aluminium: SheetProperties = {
  density: 2700,
  conductivity: (celsius) => 190 + 0.07 * within(celsius),
  heatCapacity: (celsius) => 903 + 0.41 * within(celsius),
  enthalpy: (celsius) => {
    const t = within(celsius);
    return 903 * t + 0.205 * t * t + (903 + 0.41 * t) * (celsius - t);
  },
};

const within = (celsius: number): number => Math.min(500, Math.max(20, celsius));
