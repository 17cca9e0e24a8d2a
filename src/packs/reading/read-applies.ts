import type { PackPart as StatedPart, Provision as StatedProvision } from '../../generated/pack-types.ts';
import type { Side } from '../../generated/plan-types.ts';
import { readDate } from '../../quantity/iso-date.ts';
import { readYears } from '../../quantity/year-range.ts';
import { factEntry } from '../fact-dictionary.ts';
import type { FactDictionary } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { Applies, Cited } from '../pack.ts';
import { readVins } from './read-vins.ts';

/** Sides that a part of a plan may have. `both` is none of them: a statement for both sides leaves them out. */
const sides: readonly string[] = ['left', 'right', 'centre'] satisfies readonly Side[];

/** What an entry of a vehicle pack is about and where the maker says it; undefined when that cannot be right, all of it told. */
export function readApplies(
  stated: StatedProvision | StatedPart,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): (Applies & Cited) | undefined {
  const before = faults.faults.length;
  const entry = factEntry(dictionary, 'part.kind');
  const parts = entry?.words ?? [];
  if (!parts.includes(stated.part)) {
    faults.at(
      `${at}/part`,
      `\`${stated.part}\` is not a kind of part.`,
      faults.nearest(stated.part, parts, entry?.synonyms),
    );
  }
  // A side that no part has would keep the statement from ever applying, a prohibition as well.
  stated.sides?.forEach((side, index) => {
    if (sides.includes(side)) return;
    faults.at(
      `${at}/sides/${String(index)}`,
      `\`${side}\` is not a side: ${sides.join(', ')}; left out, the statement holds for all.`,
      faults.nearest(side, sides),
    );
  });
  const years = readYears(stated.years);
  if (!years.ok) faults.at(`${at}/years`, years.reason);
  const vins = stated.vins === undefined ? undefined : readVins(stated.vins, `${at}/vins`, faults);
  if (stated.published !== undefined) {
    const published = readDate(stated.published);
    if (!published.ok) faults.at(`${at}/published`, published.reason);
  }
  if (stated.revision === undefined && stated.published === undefined) {
    faults.at(at, 'A statement needs the revision of its document, or its day of publication.');
  }
  if (faults.faults.length > before || !years.ok) return undefined;
  return {
    part: stated.part,
    ...(stated.sides === undefined ? {} : { sides: stated.sides }),
    ...(stated.bodies === undefined ? {} : { bodies: stated.bodies }),
    years: { from: years.from, to: years.to },
    ...(vins === undefined ? {} : { vins }),
    document: stated.document,
    ...(stated.revision === undefined ? {} : { revision: stated.revision }),
    ...(stated.published === undefined ? {} : { published: stated.published }),
    ...(stated.page === undefined ? {} : { page: stated.page }),
  };
}
