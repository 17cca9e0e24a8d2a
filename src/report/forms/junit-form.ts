import { againstLines } from '../against-lines.ts';
import type { Finding } from '../../judge/finding.ts';
import type { NotJudgedReason, PlacedFinding, PlanReport, ReportForm, RunHead } from '../plan-report.ts';
import { xmlText } from './xml.ts';

/**
 * JUnit XML: a suite is a plan, a case is one rule on one part. A stop fails, a hold fails unless it is accepted or the plan is a
 * draft (then it is skipped), a note passes with its text, what could not be judged is an error. A plan of which there is nothing
 * to say has one case that passes, so that it is seen to have been judged. Totals would have to come first and are left out: every
 * reader of the form adds up for itself.
 */
export function junitForm(): ReportForm {
  let head: RunHead | undefined;
  return {
    begin: (given) => {
      head = given;
      return '<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="planish">\n';
    },
    plan: (plan) => suite(plan, head),
    end: () => '</testsuites>\n',
  };
}

type Outcome = 'failure' | 'error' | 'skipped' | 'passed';

interface Case {
  readonly name: string;
  readonly outcome: Outcome;
  /** `stop`, `hold`, `note` or `not judged`. */
  readonly type: string;
  readonly message: string;
  readonly text: string;
}

function suite(plan: PlanReport, head: RunHead | undefined): string {
  const cases = [...plan.notJudged.map(errorCase), ...findingCases(plan)];
  const shown = cases.length > 0 ? cases : [passing(plan)];
  const count = (outcome: Outcome): string => String(shown.filter((one) => one.outcome === outcome).length);
  const start = `tests="${String(shown.length)}" failures="${count('failure')}" errors="${count('error')}" skipped="${count('skipped')}"`;
  const lines = [
    `<testsuite name="${xmlText(plan.file)}" ${start} time="0" timestamp="${xmlText(head?.asOf ?? '')}T00:00:00">`,
    '<properties>',
    ...propertiesOf(plan, head).map(
      ([name, value]) => `<property name="${name}" value="${xmlText(value)}"/>`,
    ),
    '</properties>',
    ...shown.map((one) => caseText(plan.file, one)),
    '</testsuite>',
  ];
  return `${lines.join('\n')}\n`;
}

function propertiesOf(plan: PlanReport, head: RunHead | undefined): readonly (readonly [string, string])[] {
  const packs = head?.packs.map(({ pack, version, digest }) => `${pack} ${version} ${digest}`).join('; ');
  return [
    ['verdict', plan.verdict],
    ...(plan.stage === undefined ? [] : ([['stage', plan.stage]] as const)),
    ...(plan.digest === undefined ? [] : ([['digest', plan.digest]] as const)),
    ...(packs === undefined ? [] : ([['packs', packs]] as const)),
  ];
}

function caseText(file: string, { name, outcome, type, message, text }: Case): string {
  const start = `<testcase classname="${xmlText(file)}" name="${xmlText(name)}" time="0"`;
  if (outcome !== 'passed')
    return `${start}><${outcome} type="${type}" message="${xmlText(message)}">${xmlText(text)}</${outcome}></testcase>`;
  return text === '' ? `${start}/>` : `${start}><system-out>${xmlText(text)}</system-out></testcase>`;
}

function passing({ verdict }: PlanReport): Case {
  // A verdict that says no without a reason is never a pass.
  const outcome = verdict === 'cleared' ? 'passed' : 'error';
  return { name: 'verdict', outcome, type: verdict, message: verdict, text: '' };
}

function errorCase({ sentence, place, rule }: NotJudgedReason): Case {
  const where = place === undefined ? '' : `Line ${String(place.line)}, column ${String(place.column)}: `;
  return {
    name: rule === undefined ? 'not judged' : `not judged: ${rule}`,
    outcome: 'error',
    type: 'not judged',
    message: sentence,
    text: `${where}${sentence}`,
  };
}

function findingCases(plan: PlanReport): readonly Case[] {
  const groups = new Map<string, PlacedFinding[]>();
  for (const placed of plan.findings) {
    const { part, rule, pack, severity, deviation } = placed.finding;
    // One rule may stop here and ask there, and of its holds one may be accepted: each kind is a case of its own.
    const key = JSON.stringify([part, rule, pack, severity, deviation !== undefined]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [placed]);
    else group.push(placed);
  }
  const met = new Set<string>();
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const kind = first.finding.deviation === undefined ? first.finding.severity : 'accepted';
    return [ownName(groupCase(plan, first.finding, group), kind, met)];
  });
}

/** Hosts take two cases of one name for one case: a rule that stops and asks on one part, or two parts that the shop calls alike. */
function ownName(one: Case, kind: string, met: Set<string>): Case {
  const tries = [one.name, `${one.name} (${kind})`];
  let name = tries.find((each) => !met.has(each));
  for (let count = 2; name === undefined; count += 1) {
    const next = `${one.name} (${kind} ${String(count)})`;
    if (!met.has(next)) name = next;
  }
  met.add(name);
  return { ...one, name };
}

function groupCase(plan: PlanReport, first: Finding, group: readonly PlacedFinding[]): Case {
  const more = group.length === 1 ? '' : ` (and ${String(group.length - 1)} more)`;
  return {
    name: `${first.partName ?? first.part ?? 'plan and vehicle'}: ${first.rule}`,
    outcome: outcomeOf(plan, first),
    type: first.severity,
    message: `${first.message}${more}`,
    text: group.map((placed) => told(plan.file, placed)).join('\n\n'),
  };
}

function outcomeOf({ stage }: PlanReport, { severity, deviation }: Finding): Outcome {
  if (severity === 'stop') return 'failure';
  if (severity === 'note') return 'passed';
  return deviation !== undefined || stage === 'draft' ? 'skipped' : 'failure';
}

function told(file: string, placed: PlacedFinding): string {
  const { finding, place } = placed;
  const { severity, message, instead, why, rule, pack, source, deviation } = finding;
  const accepted =
    deviation === undefined
      ? ''
      : `\nAccepted by ${deviation.by}, ${deviation.role}, on ${deviation.date}, until ${deviation.expires}: ${deviation.reason}`;
  return `${severity.toUpperCase()} ${message}\nInstead: ${instead}\nWhy: ${why}${accepted}\n${file}:${String(place.line)}:${String(place.column)}${againstLines(placed)}, rule ${rule} of pack ${pack}; source: ${source}`;
}
