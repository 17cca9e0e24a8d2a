import type { FactDictionary } from '../packs/fact-dictionary.ts';
import type { Pack } from '../packs/pack.ts';
import { rulesInForce } from '../packs/versions/rules-in-force.ts';
import type { DesignationAnswer } from '../steel/answer/designation-answer.ts';
import { steelFamily } from '../steel/steel-family.ts';
import type { StrengthClass } from '../steel/strength-class.ts';
import { classLimits, isOnHotWork } from './class-limits.ts';
import { classRules, rulesOn, rulesOnMaterials } from './class-rules.ts';
import type { ClassRule, MaterialKnown } from './class-rules.ts';

/** Rules on one kind of material, as "press-hardened parts", by their ids; the sentences are made when they are asked for. */
export interface NamedRules {
  readonly of: string;
  readonly names: readonly string[];
  readonly rules: readonly ClassRule[];
}

export interface RulesOfMaterials {
  /** Name and version of the pack. */
  readonly pack: string;
  /** What speaks of the answer's material: of its class, and of a name that leaves something open. */
  readonly of: (answer: DesignationAnswer) => readonly NamedRules[];
}

/** What the general pack among these has on materials; each rule is told once, however many designations it speaks of. */
export function rulesOfMaterials(packs: readonly Pack[], dictionary: FactDictionary): RulesOfMaterials {
  const general = packs.find(({ name }) => name === 'general');
  const all = general === undefined ? [] : rulesInForce(general.rules, general.version);
  // Each kind of material that is met looks through those that speak of any.
  const inForce = rulesOnMaterials(all, [coldWorked, aluminium]);
  const onHotWork = all.filter(isOnHotWork);
  const told = new Map<string, NamedRules>();
  const once = (of: string, make: () => NamedRules): NamedRules => {
    const rules = told.get(of) ?? make();
    told.set(of, rules);
    return rules;
  };
  const onMaterial = (
    of: string,
    material: MaterialKnown,
    { but = [], also = [] }: { readonly but?: readonly string[]; readonly also?: readonly ClassRule[] } = {},
  ): NamedRules => {
    const rules = rulesOn(inForce, material).filter(({ id }) => !but.includes(id));
    let sentences: readonly ClassRule[] | undefined;
    return {
      of,
      names: [...rules.map(({ id }) => id), ...also.map(({ rule }) => rule)],
      get rules() {
        sentences ??= [...classRules(rules, material, dictionary), ...also];
        return sentences;
      },
    };
  };
  const ofClass = (counts: StrengthClass | null): NamedRules => {
    const of = counts === null ? 'parts whose strength is not known' : `${counts} parts`;
    return once(of, () =>
      counts === null
        ? onMaterial(of, { ambiguous: false })
        : onMaterial(
            of,
            { class: counts, ambiguous: false },
            { also: classLimits(onHotWork, general?.limits ?? [], counts) },
          ),
    );
  };
  const ofDoubt = (): NamedRules => {
    const of = 'parts whose grade is not sure';
    return once(of, () => {
      const sure = rulesOn(inForce, { class: '', ambiguous: false }).map(({ id }) => id);
      return onMaterial(of, { class: '', ambiguous: true }, { but: sure });
    });
  };
  const ofState = (answer: DesignationAnswer): readonly NamedRules[] => {
    const known = stateOf(answer);
    if (known === undefined) return [];
    const { of, also } = known;
    return [once(of, () => onMaterial(of, { class: '', ambiguous: false, also }))];
  };
  return {
    pack: `general ${general?.version ?? ''}`,
    of: (answer) =>
      answer.known === 'ambiguous' && !answer.same_class
        ? [ofClass(answer.class), ...ofState(answer), ofDoubt()]
        : [ofClass(answer.class), ...ofState(answer)],
  };
}

/** Facts of a part with rules of their own. */
const coldWorked = 'part.cold_worked';
const aluminium = 'part.aluminium';

type State = { readonly of: string } & Pick<Required<MaterialKnown>, 'also'>;

/** What of a designation beside its class has rules of its own. */
function stateOf({ condition, family }: DesignationAnswer): State | undefined {
  if (condition === 'cold hardened' || family === steelFamily('recovery_annealed').word)
    return { of: 'cold-hardened parts', also: { fact: coldWorked, value: true } };
  if (family === steelFamily('aluminium_casting').word)
    return { of: 'aluminium castings', also: { fact: aluminium, value: 'casting' } };
  if (family === steelFamily('aluminium_7xxx').word)
    return { of: 'parts of the 7000 series', also: { fact: aluminium, value: '7xxx' } };
  return undefined;
}
