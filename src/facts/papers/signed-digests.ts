import type { FactNames } from '../../generated/fact-names.ts';
import type { JudgingPack } from '../context.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import type { Survey } from '../survey.ts';

type DigestFact =
  'sign-off.digest_stated' | 'sign-off.edited' | 'sign-off.packs_changed' | 'sign-off.packs_missing';

const noDigest = 'The signature bears no digest of the plan.';
const noPacks = 'The signature names no rule packs.';

/** Whether plan and packs are those that were signed. A digest shows an edit; who signed it cannot show. */
export function signedDigestFacts({
  plan,
  context,
}: Survey): Readonly<Record<Extract<FactNames['sign-off'], DigestFact>, Fact>> {
  const at = '/sign_off/digests';
  const digests = plan.sign_off?.digests;
  const { signed } = context;
  const { changed, missing } = packGaps(digests?.packs ?? [], signed?.packs ?? []);
  const whyNone = digests?.packs === undefined ? noPacks : 'The packs are those of the signature.';
  return {
    'sign-off.digest_stated': computed(digests?.plan !== undefined, at),
    'sign-off.edited':
      digests?.plan === undefined
        ? unknown(noDigest, at)
        : computedOr(
            signed === undefined ? undefined : digests.plan !== signed.planDigest,
            `${at}/plan`,
            'The digest of the plan was not computed.',
          ),
    'sign-off.packs_changed': computedOr(changed || undefined, `${at}/packs`, whyNone),
    'sign-off.packs_missing': computedOr(missing || undefined, `${at}/packs`, whyNone),
  };
}

type SignedPack = { readonly [Key in keyof JudgingPack]?: JudgingPack[Key] | undefined };

function packGaps(
  then: readonly SignedPack[],
  now: readonly JudgingPack[],
): { readonly changed: string; readonly missing: string } {
  if (then.length === 0) return { changed: '', missing: '' };
  const changed: string[] = [];
  const missing: string[] = [];
  for (const { pack = 'a pack without a name', version = 'of no version', digest } of then) {
    const here = now.find((one) => one.pack === pack);
    if (here === undefined) missing.push(`${pack} ${version}`);
    else if (here.version !== version) changed.push(`${pack} ${version} then, ${here.version} now`);
    else if (here.digest !== digest) changed.push(`${pack} ${version} then and now, with another content`);
  }
  for (const { pack, version } of now) {
    if (!then.some((one) => one.pack === pack)) changed.push(`${pack} ${version} now, not then`);
  }
  return { changed: changed.join('; '), missing: missing.join(', ') };
}
