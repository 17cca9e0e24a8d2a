import type { SheetProperties } from './sheet-properties.ts';

/**
 * Copper as a heat sink: 380 W/(m·K), 385 J/(kg·K), 8930 kg/m³, constant (handbook values near room temperature,
 * from memory). Its heat capacity rises by about a tenth up to 500 °C; left out, so a bar takes up rather too little.
 */
export const copper: SheetProperties = {
  density: 8930,
  conductivity: () => 380,
  heatCapacity: () => 385,
  enthalpy: (celsius) => 385 * celsius,
};
