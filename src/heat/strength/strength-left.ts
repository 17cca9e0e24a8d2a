import { aluminiumLeft } from './aluminium-left.ts';
import { bakeHardenedLeft } from './bake-hardened-left.ts';
import { historyFault } from '../history-fault.ts';
import { martensiteLeft } from './martensite-left.ts';
import { multiphaseLeft } from './multiphase-left.ts';
import { firstOutside } from '../outside.ts';
import { plainSteelLeft } from './plain-steel-left.ts';
import type { TemperatureHistory } from '../point-history.ts';
import type { Delivered, StrengthKind, StrengthLeft } from './strength-answer.ts';

/**
 * What strength is left, cold, after a history of heat: a range in per cent of before, or why there is none. Each kind has
 * its own model or threshold, in its own file. Several heatings: `oneAfterAnother` first.
 */
export function strengthLeft(
  kind: StrengthKind,
  history: TemperatureHistory,
  delivered: Delivered = {},
): StrengthLeft {
  const fault =
    historyFault(history) ??
    firstOutside([
      ['hardness before', delivered.hv ?? 100, 50, 700, 'HV'],
      ['tensile strength before', delivered.tensileMpa ?? 500, 100, 2200, 'MPa'],
      ['proof strength before', delivered.proofMpa ?? 300, 50, 2000, 'MPa'],
    ]);
  if (fault !== undefined) return { state: 'unknown', reason: fault };
  switch (kind) {
    case 'press-hardened':
    case 'martensitic':
      return martensiteLeft(history, delivered);
    case 'dual-phase':
    case 'complex-phase':
    case 'TRIP':
      return multiphaseLeft(kind, history, delivered);
    case 'bake-hardened':
      return bakeHardenedLeft(history, delivered);
    case 'high-strength low-alloy':
    case 'mild':
      return plainSteelLeft(history, delivered);
    case 'aluminium 6xxx T4':
    case 'aluminium 6xxx T6':
    case 'aluminium 5xxx O':
    case 'aluminium 5xxx H':
    case 'aluminium 7xxx':
      return aluminiumLeft(kind, history, delivered);
  }
}
