import type { FactNames } from '../../generated/fact-names.ts';
import { isOfLines, isSafetySystem, numberSays, ownSystem } from './code-system.ts';
import type { Code } from './code-system.ts';
import type { Fact } from '../fact.ts';
import { computedOr, unknown } from '../make-fact.ts';
import { scanBelies } from './scan-belies.ts';
import { saysNone } from './step-draft.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type CodesFact = Extract<
  FactNames['step'],
  `step.codes_${'left' | 'unexplained' | 'of_assistance' | 'of_lines' | 'misfiled'}` | 'step.scan_belies'
>;
type CodesFacts = Readonly<Record<CodesFact, Fact>>;

const other = unknown('No scan after the repair is stated, or the step is another.');

/**
 * Codes that are left after the repair: those of a system on which a life hangs, whatever is said of them; those that are booked under
 * a system which their number belies; active ones of driver assistance; and of the others those that nobody explains.
 */
export function codesFacts(survey: Survey, { what, at }: StepDraft): CodesFacts {
  const { scan_before: before, scan_after: after } = survey.plan.verify ?? {};
  const belies = {
    'step.scan_belies':
      what === 'scan before the repair'
        ? scanBelies(survey, `${at}/codes`)
        : unknown('The step is another.', at),
  };
  if (what !== 'scan after the repair' || after === undefined)
    return {
      'step.codes_left': other,
      'step.codes_misfiled': other,
      'step.codes_of_lines': other,
      'step.codes_of_assistance': other,
      'step.codes_unexplained': other,
      ...belies,
    };
  const codes = after.codes ?? [];
  const told: Record<Kind, { names: string[]; at: string }> = {
    left: { names: [], at: `${at}/codes` },
    misfiled: { names: [], at: `${at}/codes` },
    lines: { names: [], at: `${at}/codes` },
    assistance: { names: [], at: `${at}/codes` },
    unexplained: { names: [], at: `${at}/codes` },
  };
  codes.forEach((code, index) => {
    const { kind, because } = judged(code, before?.codes ?? []);
    if (kind === undefined) return;
    const list = told[kind];
    if (list.names.length === 0) list.at = `${at}/codes/${String(index)}`;
    list.names.push(named(code, because));
  });
  const fact = (kind: Kind): Fact =>
    computedOr(told[kind].names.join(', ') || undefined, told[kind].at, 'No such code is left.');
  return {
    'step.codes_left': fact('left'),
    'step.codes_misfiled': fact('misfiled'),
    'step.codes_of_lines': fact('lines'),
    'step.codes_of_assistance': fact('assistance'),
    'step.codes_unexplained': fact('unexplained'),
    ...belies,
  };
}

type Kind = 'left' | 'misfiled' | 'lines' | 'assistance' | 'unexplained';

function judged(code: Code, before: readonly Code[]): { kind?: Kind; because?: string } {
  if (code.state === 'cleared') return {};
  const { system, by } = ownSystem(code, before);
  if (system !== undefined && isSafetySystem(system))
    return by === undefined ? { kind: 'left' } : { kind: 'left', because: `${system} ${by}` };
  if (system === 'driver assistance' && code.state === 'active') return { kind: 'assistance' };
  if (isOfLines(code)) return { kind: 'lines' };
  const says = numberSays(code);
  if (says !== undefined) return { kind: 'misfiled', because: says };
  return saysNone(code.explanation) ? { kind: 'unexplained' } : {};
}

export function named({ code = 'a code', system, state }: Code, because?: string): string {
  const words = [system, state, because].filter((word) => word !== undefined).join(', ');
  return words === '' ? code : `${code} (${words})`;
}
