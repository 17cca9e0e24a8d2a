/** What kind of quantity a text must be; the same unit may serve two of them (K, °C, °F). */
export const dimensions = [
  'temperature',
  'temperature difference',
  'length',
  'time',
  'stress',
  'force',
  'current',
  'voltage',
  'energy',
  'energy per length',
  'energy per area',
  'power',
  'speed',
  'insulation',
  'resistance',
  'angle',
  'mass',
  'percent',
] as const;

export type Dimension = (typeof dimensions)[number];

/** The unit that a number of each dimension is in, everywhere right of `quantity/`. */
export const canonicalUnit: Readonly<Record<Dimension, string>> = {
  temperature: '°C',
  'temperature difference': 'K',
  length: 'mm',
  time: 's',
  stress: 'MPa',
  force: 'kN',
  current: 'kA',
  voltage: 'V',
  energy: 'J',
  'energy per length': 'kJ/mm',
  'energy per area': 'J/cm²',
  power: 'W',
  speed: 'mm/s',
  insulation: 'Ω/V',
  resistance: 'Ω',
  angle: '°',
  mass: 'kg',
  percent: '%',
};
