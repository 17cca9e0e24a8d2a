import type { SheetKind } from '../generated/fact-names.ts';
import type { Fact } from './fact.ts';

export type { SheetKind };

/**
 * The flat record that a rule is asked about. A sheet's own facts come first; what it does not hold is
 * looked for on the sheets it stands on (an operation stands on its part, the part on the vehicle …).
 */
export interface FactSheet {
  readonly kind: SheetKind;
  /** JSON pointer of what the sheet describes; the place of a finding about it. */
  readonly at: string;
  readonly facts: Readonly<Record<string, Fact>>;
  /** The same, one by one: left out where all are derived already. */
  own?(name: string): Fact | undefined;
  /** Their names; left out likewise. */
  names?(): readonly string[];
  readonly standsOn: readonly FactSheet[];
  /** Id of the part that the sheet belongs to, if any. */
  readonly part?: string;
  /** Pointer of the operation that the sheet belongs to, if any. */
  readonly operation?: string;
}

/** The fact of that name on the sheet itself. */
export function ownFact(sheet: FactSheet, name: string): Fact | undefined {
  return sheet.own === undefined ? sheet.facts[name] : sheet.own(name);
}

export function ownNames(sheet: FactSheet): readonly string[] {
  return sheet.names === undefined ? Object.keys(sheet.facts) : sheet.names();
}

/** The fact of that name on the sheet or on what it stands on; undefined when no sheet of them holds it. */
export function lookUp(sheet: FactSheet, name: string): Fact | undefined {
  const own = ownFact(sheet, name);
  if (own !== undefined) return own;
  for (const base of sheet.standsOn) {
    const found = lookUp(base, name);
    if (found !== undefined) return found;
  }
  return undefined;
}
