import type { Finding, Severity } from '../../judge/finding.ts';
import type { Place } from '../../plan/source-text.ts';
import { fileUri } from '../file-uri.ts';
import type { NotJudgedReason, PlacedFinding, PlanReport, ReportForm, RunHead } from '../plan-report.ts';
import { ruleList } from './sarif-rules.ts';
import type { RuleList } from './sarif-rules.ts';
import { sarifText } from './sarif-text.ts';

const schema = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';

const levels: Readonly<Record<Severity, 'error' | 'warning' | 'note'>> = {
  stop: 'error',
  hold: 'warning',
  note: 'note',
};

/**
 * The report as SARIF 2.1.0 (OASIS). Results are written as they come; files and rules follow, for they are known last. A file
 * that could not be judged is a result too, since hosts do not show notifications.
 */
export function sarifForm(): ReportForm {
  let head: RunHead | undefined;
  let rules = ruleList([]);
  let results = 0;
  const artifacts: object[] = [];
  const failures: object[] = [];
  return {
    begin: (given) => {
      head = given;
      rules = ruleList(given.rules?.() ?? []);
      return `{"$schema":"${schema}","version":"2.1.0","runs":[{"columnKind":"utf16CodeUnits","results":[`;
    },
    plan: (plan) => {
      const index = artifacts.push(artifactOf(plan)) - 1;
      failures.push(...plan.notJudged.map((reason) => notification(plan, reason, index)));
      const lines = [
        ...plan.notJudged.map((reason) => unjudged(plan, reason, rules, index)),
        ...plan.findings.map((placed) => resultOf(plan, placed, rules, index)),
      ].map((result) => `${results++ === 0 ? '' : ','}\n${JSON.stringify(result)}`);
      return lines.join('');
    },
    end: ({ verdict, verdicts }) => {
      const tool = {
        driver: {
          name: 'planish',
          semanticVersion: head?.planish,
          rules: rules.descriptors(),
        },
      };
      const isWhole = verdict !== 'not judged';
      const invocation = { executionSuccessful: isWhole, toolExecutionNotifications: failures };
      const about = { verdict, verdicts, as_of: head?.asOf, packs: head?.packs, shard: head?.shard };
      return `\n],\n"artifacts":[${artifacts.map((one) => `\n${JSON.stringify(one)}`).join(',')}\n],
"invocations":[${JSON.stringify(invocation)}],
"tool":${JSON.stringify(tool)},
"properties":${JSON.stringify(about)}}]}\n`;
    },
  };
}

function artifactOf({ file, digest, verdict, stage }: PlanReport): object {
  return {
    location: { uri: fileUri(file) },
    roles: ['analysisTarget'],
    ...(digest === undefined ? {} : { hashes: { 'sha-256': digest.replace(/^sha256:/u, '') } }),
    properties: { verdict, ...(stage === undefined ? {} : { stage }) },
  };
}

function resultOf(plan: PlanReport, placed: PlacedFinding, rules: RuleList, index: number): object {
  const { finding, place } = placed;
  const related = placed.related?.() ?? [];
  return {
    ruleId: finding.rule,
    ruleIndex: rules.indexOf(finding),
    level: levels[finding.severity],
    message: { text: sarifText(`${finding.message}\nInstead: ${finding.instead}`) },
    locations: [{ ...location(plan, place, index), ...logical(finding) }],
    ...(related.length === 0
      ? {}
      : {
          relatedLocations: related.map(({ what, place: at }, id) => ({
            id,
            message: { text: sarifText(what) },
            ...location(plan, at, index),
          })),
        }),
    partialFingerprints: { 'planishFinding/v1': finding.fingerprint },
    ...suppressions(finding),
    properties: { severity: finding.severity, pack: finding.pack, source: finding.source },
  };
}

/** A deviation permit stands in the plan and accepts the finding; the result is kept and marked. */
function suppressions({ deviation }: Finding): object {
  if (deviation === undefined) return {};
  const { by, role, date, reason, expires } = deviation;
  const justification = `Accepted by ${by}, ${role}, on ${date}, until ${expires}: ${reason}`;
  return { suppressions: [{ kind: 'inSource', status: 'accepted', justification }] };
}

function unjudged(plan: PlanReport, reason: NotJudgedReason, rules: RuleList, index: number): object {
  return {
    ruleId: 'not-judged',
    ruleIndex: rules.indexOfNotJudged(),
    level: 'error',
    message: { text: sarifText(sentenceOf(reason)) },
    locations: [location(plan, reason.place, index)],
  };
}

function notification(plan: PlanReport, reason: NotJudgedReason, index: number): object {
  return {
    level: 'error',
    message: { text: sarifText(sentenceOf(reason)) },
    locations: [location(plan, reason.place, index)],
  };
}

function sentenceOf({ rule, sentence }: NotJudgedReason): string {
  return rule === undefined
    ? `Not judged: ${sentence}`
    : `Not judged: rule ${rule} could not be asked: ${sentence}`;
}

function location({ file }: PlanReport, place: Place | undefined, index: number): object {
  return {
    physicalLocation: {
      artifactLocation: { uri: fileUri(file), index },
      ...(place === undefined
        ? {}
        : {
            region: {
              startLine: place.line,
              startColumn: place.column,
              endLine: place.endLine,
              endColumn: place.endColumn,
            },
          }),
    },
  };
}

function logical({ part, partName }: Finding): object {
  if (part === undefined) return {};
  const name = partName === undefined || partName === part ? part : `${partName} (${part})`;
  return { logicalLocations: [{ name, fullyQualifiedName: `parts/${part}`, kind: 'part' }] };
}
