import type { SheetProperties } from './sheet-properties.ts';

/**
 * Carbon steel by EN 1993-1-2:2005, 3.4.1: conductivity, specific heat with its peak at 735 °C, density 7850 kg/m³.
 *
 * Made for 20 to 1200 °C; below and above, the value at the end of that range is kept. The peak stands for the
 * transformation in slow heating; a torch moves it up, which changes the neighbour by a few kelvin at most.
 */
export const carbonSteel: SheetProperties = {
  density: 7850,
  conductivity: (celsius) => {
    const t = Math.max(20, celsius);
    return t < 800 ? 54 - 3.33e-2 * t : 27.3;
  },
  heatCapacity: (celsius) => {
    const t = Math.max(20, celsius);
    if (t < 600) return 425 + t * (0.773 + t * (-1.69e-3 + t * 2.22e-6));
    if (t < 735) return 666 + 13002 / (738 - t);
    if (t < 900) return 545 + 17820 / (t - 731);
    return 650;
  },
  enthalpy: (celsius) => {
    if (celsius < 20) return start + 439.8 * (celsius - 20);
    if (celsius < 600) return toSixHundred(celsius);
    if (celsius < 735) return at600 + rising(celsius) - rising(600);
    if (celsius < 900) return at735 + falling(celsius) - falling(735);
    return at900 + 650 * (celsius - 900);
  },
};

// The antiderivatives of the four branches; joined below so that the enthalpy is continuous.
const toSixHundred = (t: number): number =>
  t * (425 + t * (0.773 / 2 + t * (-1.69e-3 / 3 + (t * 2.22e-6) / 4)));
const rising = (t: number): number => 666 * t - 13002 * Math.log(738 - t);
const falling = (t: number): number => 545 * t + 17820 * Math.log(t - 731);

const start = toSixHundred(20);
const at600 = toSixHundred(600);
const at735 = at600 + rising(735) - rising(600);
const at900 = at735 + falling(900) - falling(735);
