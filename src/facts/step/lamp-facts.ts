import type { FactNames } from '../../generated/fact-names.ts';
import type { Plan } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computedOr, unknown } from '../make-fact.ts';
import { isSafetySystem, systemInWords } from './code-system.ts';
import { lampsWithoutCode } from './lamps-without-code.ts';
import { saysNone } from './step-draft.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type LampFact = Extract<
  FactNames['step'],
  'step.lamps_lit' | 'step.lamps_unexplained' | 'step.lamps_without_code'
>;
type LampFacts = Readonly<Record<LampFact, Fact>>;
type Lamp = NonNullable<
  NonNullable<NonNullable<NonNullable<Plan['verify']>['warning_lamps']>['lit']>
>[number];

const other = unknown('The step is another.');
const ofAnotherStep: LampFacts = {
  'step.lamps_lit': other,
  'step.lamps_unexplained': other,
  'step.lamps_without_code': other,
};

/** Lamps that stay lit at release: those of a system on which a life hangs, and others that nobody explains. */
export function lampFacts(survey: Survey, { what, at }: StepDraft): LampFacts {
  if (what === 'scan before the repair')
    return {
      'step.lamps_lit': other,
      'step.lamps_unexplained': other,
      'step.lamps_without_code': computedOr(
        lampsWithoutCode(survey),
        at,
        'No such lamp was lit, its code is listed or its lack explained, or the scan is not made.',
      ),
    };
  if (what !== 'warning lamps') return ofAnotherStep;
  const lit = survey.plan.verify?.warning_lamps?.lit ?? [];
  const unexplained = lit.filter((lamp) => !isSafetyLamp(lamp) && saysNone(lamp.explanation));
  const place = (lamps: readonly Lamp[]): string =>
    `${at}/lit/${String(
      Math.max(
        0,
        lit.findIndex((lamp) => lamps.includes(lamp)),
      ),
    )}`;
  const lamps = lit.filter(isSafetyLamp);
  return {
    'step.lamps_lit': computedOr(named(lamps), place(lamps), 'No such lamp is lit.'),
    'step.lamps_unexplained': computedOr(named(unexplained), place(unexplained), 'Every lamp is explained.'),
    'step.lamps_without_code': other,
  };
}

/** By its system; and where that is another, or none is told, by what the lamp is called. */
function isSafetyLamp({ lamp = '', system }: Lamp): boolean {
  if (system !== undefined && isSafetySystem(system)) return true;
  const named =
    systemInWords(lamp) ?? (system === undefined && /\bbelt/i.test(lamp) ? 'restraint' : undefined);
  // "Emergency brake assist" is a lamp of driver assistance, "airbag" never is.
  return named !== undefined && (system !== 'driver assistance' || named === 'restraint');
}

function named(lamps: readonly Lamp[]): string | undefined {
  return lamps.map(({ lamp, system }) => lamp ?? system ?? 'a lamp').join(', ') || undefined;
}
