import type { ColdWork } from './cold-work.ts';
import { steelFamily } from './steel-family.ts';
import type { StrengthClass } from './strength-class.ts';

/** What a sheet is as far as heat from beside it is concerned; the words under which rule packs give limits. */
export type HeatVictim =
  | 'plain steel'
  | 'strong low-alloy steel'
  | 'hardened or multi-phase steel'
  | 'aluminium'
  | 'stainless steel'
  | 'magnesium or composite'
  | 'plastic';

/**
 * The same where more than the class is known. Low-alloy steel of 590 MPa and more is no mild steel, but nothing in it is tempered:
 * it keeps what rolling gave it up to about 580 °C. Soft strip that was rolled hard loses that as hardened steel does.
 */
export function heatVictimOf({ class: strengthClass, family, coldWork }: KnownMaterial): HeatVictim {
  const byClass = heatVictimOfClass(strengthClass);
  if (strengthClass === 'advanced high-strength' && family === steelFamily('hsla').word)
    return 'strong low-alloy steel';
  return byClass === 'plain steel' && coldWork.is === true ? 'hardened or multi-phase steel' : byClass;
}

interface KnownMaterial {
  readonly class: StrengthClass;
  readonly family?: string;
  readonly coldWork: ColdWork;
}

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
    case 'plastic':
      return 'plastic';
  }
}
