import { adamsPeakCelsius } from '../../../src/heat/weld/adams.ts';
import { arcEnergy, heatInput } from '../../../src/heat/weld/arc.ts';
import { aluminium } from '../../../src/heat/metal/aluminium.ts';
import { carbonSteel } from '../../../src/heat/metal/carbon-steel.ts';
import { stainlessSteel } from '../../../src/heat/metal/stainless-steel.ts';
import { tensileOfHardness } from '../../../src/heat/strength/hardness-to-tensile.ts';
import { temperedHardness } from '../../../src/heat/strength/tempering.ts';
import { fineSheet, pointDoseCelsius } from './closed-form-sheets.ts';

export type Given = Readonly<Record<string, number | string>>;

/**
 * What a row of a JSON file can ask for: each takes the numbers of `given` and answers one. Add one here, and rows
 * in any JSON file of this folder.
 */
export const computers: Readonly<Record<string, (given: Given) => number>> = {
  'steel heat capacity': (given) => carbonSteel.heatCapacity(number(given, 'celsius')),
  'steel conductivity': (given) => carbonSteel.conductivity(number(given, 'celsius')),
  'steel enthalpy from 20 °C': (given) =>
    (carbonSteel.enthalpy(number(given, 'celsius')) - carbonSteel.enthalpy(20)) / 1000,
  'aluminium heat capacity': (given) => aluminium.heatCapacity(number(given, 'celsius')),
  'aluminium conductivity': (given) => aluminium.conductivity(number(given, 'celsius')),
  'stainless heat capacity': (given) => stainlessSteel.heatCapacity(number(given, 'celsius')),
  'stainless conductivity': (given) => stainlessSteel.conductivity(number(given, 'celsius')),
  'arc energy': (given) => joules(arcEnergy(passOf(given))),
  'heat input of MIG or MAG': (given) => joules(heatInput({ ...passOf(given), process: 'MIG or MAG' })),
  'Adams peak': (given) => adams(given, number(given, 'distanceMm')),
  'Adams width': (given) => {
    let [near, far] = [0, 500];
    for (let n = 0; n < 60; n++) {
      const middle = (near + far) / 2;
      if (adams(given, middle) > number(given, 'celsius')) near = middle;
      else far = middle;
    }
    return near;
  },
  'tempered hardness': (given) => {
    const celsius = number(given, 'celsius');
    const history = { seconds: [0, number(given, 'seconds')], celsius: [celsius, celsius] };
    const left = temperedHardness(history, number(given, 'startHv'));
    return left.state === 'tempered' ? left.hv : Number.NaN;
  },
  'tensile of hardness': (given) => tensileOfHardness(number(given, 'hv')) ?? Number.NaN,
  'closed form strip or disc': fineSheet,
  'point dose': pointDoseCelsius,
};

export function number(given: Given, key: string): number {
  const value = given[key];
  if (typeof value !== 'number') throw new Error(`the row states no number ${key}`);
  return value;
}

const joules = (answer: ReturnType<typeof arcEnergy>): number => (answer.ok ? answer.joulePerMm : Number.NaN);

const passOf = (given: Given): Parameters<typeof arcEnergy>[0] => ({
  volts: number(given, 'volts'),
  amperes: number(given, 'amperes'),
  speedMmPerSecond: number(given, 'speedMmPerSecond'),
});

function adams(given: Given, distanceMm: number): number {
  const answer = adamsPeakCelsius({
    heatInputJPerMm: number(given, 'heatInputJPerMm'),
    thicknessMm: number(given, 'thicknessMm'),
    distanceMm,
    metal: 'steel',
    ambientCelsius: number(given, 'ambientCelsius'),
  });
  return answer.ok ? answer.peakCelsius : Number.NaN;
}
