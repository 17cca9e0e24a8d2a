import { aluminium } from './aluminium.ts';
import { carbonSteel } from './carbon-steel.ts';
import { mildSteel } from './mild-steel.ts';
import type { SheetProperties } from './sheet-properties.ts';
import { stainlessSteel } from './stainless-steel.ts';

export type SheetMetal = 'steel' | 'mild steel' | 'aluminium' | 'stainless';

export const propertiesOf: Readonly<Record<SheetMetal, SheetProperties>> = {
  steel: carbonSteel,
  'mild steel': mildSteel,
  aluminium,
  stainless: stainlessSteel,
};
