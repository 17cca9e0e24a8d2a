import { builtInPacks } from '../generated/built-in-packs.ts';
import { classLimits } from '../judge/class-limits.ts';
import type { MaterialKnown } from '../judge/class-rules.ts';
import { classRules } from '../judge/class-rules.ts';
import { rulesInForce } from '../packs/rules-in-force.ts';
import type { SteelRules } from '../report/steel-report.ts';
import type { DesignationAnswer } from '../steel/designation-answer.ts';
import { steelFamily } from '../steel/steel-family.ts';
import type { StrengthClass } from '../steel/strength-class.ts';
import { dictionary } from './dictionary.ts';

export interface RulesOfMaterials {
  /** Name and version of the pack. */
  readonly pack: string;
  /** What speaks of the answer's material: of its class, and of a name that leaves something open. */
  readonly of: (answer: DesignationAnswer) => readonly SteelRules[];
}

/** The rules of the built-in pack on materials; each is told once, however many designations it speaks of. */
export function rulesOfMaterials(): RulesOfMaterials {
  const general = builtInPacks().find(({ name }) => name === 'general');
  const inForce = general === undefined ? [] : rulesInForce(general.rules, general.version);
  const told = new Map<string, SteelRules>();
  const once = (of: string, make: () => SteelRules['rules']): SteelRules => {
    const rules = told.get(of) ?? { of, rules: make() };
    told.set(of, rules);
    return rules;
  };
  const ofClass = (counts: StrengthClass | null): SteelRules =>
    counts === null
      ? once('parts whose strength is not known', () => classRules(inForce, { ambiguous: false }, dictionary))
      : once(`${counts} parts`, () => [
          ...classRules(inForce, { class: counts, ambiguous: false }, dictionary),
          ...classLimits(inForce, general?.limits ?? [], counts),
        ]);
  const ofDoubt = (): SteelRules =>
    once('parts whose grade is not sure', () => {
      const sure = new Set(
        classRules(inForce, { class: '', ambiguous: false }, dictionary).map((one) => one.rule),
      );
      return classRules(inForce, { class: '', ambiguous: true }, dictionary).filter(
        (one) => !sure.has(one.rule),
      );
    });
  const ofState = (answer: DesignationAnswer): readonly SteelRules[] => {
    const known = stateOf(answer);
    if (known === undefined) return [];
    const { of, also } = known;
    return [once(of, () => classRules(inForce, { class: '', ambiguous: false, also }, dictionary))];
  };
  return {
    pack: `general ${general?.version ?? ''}`,
    of: (answer) =>
      answer.known === 'ambiguous' && !answer.same_class
        ? [ofClass(answer.class), ...ofState(answer), ofDoubt()]
        : [ofClass(answer.class), ...ofState(answer)],
  };
}

type State = { readonly of: string } & Pick<Required<MaterialKnown>, 'also'>;

/** What of a designation beside its class has rules of its own. */
function stateOf({ condition, family }: DesignationAnswer): State | undefined {
  if (condition === 'cold hardened' || family === steelFamily('recovery_annealed').word)
    return { of: 'cold-hardened parts', also: { fact: 'part.cold_worked', value: true } };
  if (family === steelFamily('aluminium_casting').word)
    return { of: 'aluminium castings', also: { fact: 'part.aluminium', value: 'casting' } };
  if (family === steelFamily('aluminium_7xxx').word)
    return { of: 'parts of the 7000 series', also: { fact: 'part.aluminium', value: '7xxx' } };
  return undefined;
}
