import { builtInPacks } from '../../generated/built-in-packs.ts';
import { keepsPromise } from '../../judge/keeps-promise.ts';
import { packAt, versionsOf } from '../../packs/versions/pack-at.ts';
import type { Pack } from '../../packs/pack.ts';
import { stepBetween } from '../../packs/versions/semantic-promise.ts';
import { readVersion } from '../../packs/versions/semantic-version.ts';
import { chooseSources } from '../check/choose-sources.ts';
import { answerTo } from '../check/judge-each.ts';
import { judgingRun } from '../judging/judging-run.ts';
import type { JudgingRun } from '../judging/judge-source.ts';
import type { PlanSource } from '../plans/plan-source.ts';

/**
 * Judges plans by the last release of a pack and by what its files give now, and tells each verdict that became worse than the step
 * between the two numbers allows. A plan that one of the two cannot judge proves nothing and is told.
 */
export function plansThatWorsen(pack: Pack, args: readonly string[], asOfDay: number): readonly string[] {
  if (args.length === 0) return [];
  const choice = chooseSources(args, process.cwd(), [], undefined);
  if (!choice.ok) return [choice.sentence];
  const last = pack.releases?.at(-1);
  const before = versionsOf(pack).find(({ version }) => version === last?.version);
  const [from, to] = [readVersion(before?.version ?? ''), readVersion(pack.version)];
  if (before === undefined || from === undefined || to === undefined) return [];
  const step = stepBetween(from, to);
  const now = { version: pack.version, digest: pack.digest, released: false };
  const runs = [before, now].map((version) => runWith({ ...packAt(pack, version), releases: [] }, asOfDay));
  let plans = 0;
  const lines = choice.sources.flatMap((source): readonly string[] => {
    const [old, next] = runs.map((run) => verdictOf(run, source));
    if (old === undefined || next === undefined) return [];
    plans += 1;
    if (old === 'not judged' || next === 'not judged') {
      return [`${source.shown}: not judged by both versions, so that it proves nothing.`];
    }
    if (keepsPromise(step, old, next)) return [];
    return [
      `${source.shown}: ${old} by ${before.version} and ${next} by ${pack.version}, which a ${step} version does not do.`,
    ];
  });
  return plans === 0 ? [`No plan was found in: ${args.join(', ')}`] : lines;
}

function verdictOf(run: JudgingRun, source: PlanSource) {
  const answer = answerTo(run, source, undefined);
  return answer.kind === 'plan' ? answer.report.verdict : undefined;
}

function runWith(pack: Pack, asOfDay: number): JudgingRun {
  return judgingRun([...builtInPacks().filter(({ name }) => name !== pack.name), pack], asOfDay);
}
