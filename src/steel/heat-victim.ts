import type { StrengthClass } from './strength-class.ts';

/** What a sheet is as far as heat from beside it is concerned; the words under which rule packs give limits. */
export type HeatVictim =
  | 'plain steel'
  | 'hardened or multi-phase steel'
  | 'aluminium'
  | 'stainless steel'
  | 'magnesium or composite';

export function heatVictimOfClass(strengthClass: StrengthClass): HeatVictim {
  switch (strengthClass) {
    case 'mild':
    case 'high-strength':
      return 'plain steel';
    case 'advanced high-strength':
    case 'ultra-high-strength':
    case 'press-hardened':
      return 'hardened or multi-phase steel';
    case 'aluminium':
      return 'aluminium';
    case 'stainless':
      return 'stainless steel';
    case 'magnesium':
    case 'composite':
      return 'magnesium or composite';
  }
}
