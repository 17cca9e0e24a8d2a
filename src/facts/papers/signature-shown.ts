import type { Fact } from '../fact.ts';
import { signedDigestFacts } from './signed-digests.ts';
import type { Survey } from '../survey.ts';

/** What a signature bears beside name and date. Words are the plan's own. */
export interface SignatureShown {
  /** `sha256:` and 64 hexadecimal digits, as the plan states it. */
  readonly planDigest?: string;
  /** Version of planish that signed. */
  readonly planish?: string;
  readonly packs: readonly SignedPackShown[];
  /** Whether plan and packs are those that were signed. */
  readonly facts: Readonly<Record<string, Fact>>;
}

export interface SignedPackShown {
  readonly name: string;
  readonly digest?: string;
}

/** The digests of the sign-off and what became of them; undefined for a plan without a sign-off. */
export function signatureShown(survey: Survey): SignatureShown | undefined {
  const { sign_off: signOff } = survey.plan;
  if (signOff === undefined) return undefined;
  const { plan: planDigest, planish, packs = [] } = signOff.digests ?? {};
  return {
    ...(planDigest === undefined ? {} : { planDigest }),
    ...(planish === undefined ? {} : { planish }),
    packs: packs.map(({ pack, version, digest }) => ({
      name: [pack ?? 'a pack without a name', version].filter((word) => word !== undefined).join(' '),
      ...(digest === undefined ? {} : { digest }),
    })),
    facts: signedDigestFacts(survey),
  };
}
