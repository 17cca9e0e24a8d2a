import type { Fact } from '../facts/fact.ts';
import type { CasePlaces } from '../packs/load-pack.ts';
import type { PackPlace } from '../packs/pack-fault.ts';
import type { Case, Cases, Pack, Rule } from '../packs/pack.ts';
import { askRule } from './ask-rule.ts';
import type { Answer } from './ask-rule.ts';

/** A case that does not come out as its rule claims. */
export interface FailedCase {
  readonly rule: string;
  readonly list: keyof Cases;
  readonly index: number;
  readonly sentence: string;
  /** Where the case stands, when the pack was just loaded from its files. */
  readonly place?: PackPlace;
}

const notInCase: Fact = { known: false, reason: 'The case does not say' };

/**
 * Puts every rule of a pack to its own cases. A pack with a failed case is not used; whoever loads a pack from a folder does
 * this too, and hands in the loader's `placeOfCase`.
 */
export function checkCases(pack: Pick<Pack, 'rules'>, placeOfCase?: CasePlaces): readonly FailedCase[] {
  return pack.rules.flatMap((rule) =>
    (['finds', 'passes', 'asks'] as const).flatMap((list) =>
      casesOf(rule)[list].flatMap((one, index): readonly FailedCase[] => {
        const got = answerTo(rule, one);
        if (isAsClaimed(list, got)) return [];
        const place = placeOfCase?.(rule.id, list, index);
        return [
          {
            rule: rule.id,
            list,
            index,
            sentence: `The rule \`${rule.id}\` does not prove itself: case ${String(index + 1)} of \`${list}\` comes out as ${got.kind}${got.kind === 'unknown' ? ` (${got.facts.join(', ')})` : ''}.`,
            ...(place === undefined ? {} : { place }),
          },
        ];
      }),
    ),
  );
}

/** A pack that is built in comes without its cases; that it would seem proved by none must not go unseen. */
function casesOf({ id, cases }: Rule): Cases {
  if (cases === undefined) throw new Error(`the cases of ${id} are kept apart`);
  return cases;
}

function answerTo(rule: Rule, given: Case): Answer {
  return askRule(rule, (name) => {
    const value = Object.hasOwn(given, name) ? given[name] : undefined;
    return value === undefined ? notInCase : { known: true, value, from: 'stated' };
  });
}

function isAsClaimed(list: keyof Cases, { kind }: Answer): boolean {
  switch (list) {
    case 'finds':
      return kind === 'found';
    case 'passes':
      return kind === 'passed' || kind === 'lifted';
    case 'asks':
      return kind === 'unknown';
  }
}
