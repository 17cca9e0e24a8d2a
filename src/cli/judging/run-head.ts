import { factSchemaVersion } from '../../generated/fact-names.ts';
import type { ResolvedPacks } from '../../packs/layers/resolve-packs.ts';
import { sourceSentence } from '../../packs/source-sentence.ts';
import { formatDay } from '../../quantity/format-day.ts';
import type { RunHead, Shard } from '../../report/plan-report.ts';
import { usedPack } from './used-pack.ts';
import { version } from '../version.ts';

/** What a report says of the run as a whole. The rules are told only to a form that asks. */
export function runHead({ layers }: ResolvedPacks, asOfDay: number, shard?: Shard): RunHead {
  return {
    planish: version,
    packs: layers.map(usedPack),
    factSchema: factSchemaVersion,
    asOf: formatDay(asOfDay),
    ...(shard === undefined ? {} : { shard }),
    rules: () =>
      layers.flatMap(({ name, rules }) =>
        rules.map(({ id, topic, severity, instead, why, source }) => ({
          ...{ id, pack: name, topic, severity, instead, why },
          source: sourceSentence(source),
        })),
      ),
  };
}
