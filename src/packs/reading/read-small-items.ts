import type { Raise as StatedRaise, Superseded } from '../../generated/pack-types.ts';
import { readDate } from '../../quantity/iso-date.ts';
import { sameName } from '../../vehicle/same-name.ts';
import type { FaultList } from './fault-list.ts';
import type { Raise, SupersededDocument } from '../pack.ts';
import { readHistory } from './read-history.ts';

/** Reads an entry of `documents` that has the form of the schema; undefined when something in it cannot be right. */
export function readSuperseded(
  stated: Superseded,
  at: string,
  faults: FaultList,
): SupersededDocument | undefined {
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'entry', faults);
  const { document, revision, superseded_by: by } = stated;
  const published = by.published === undefined ? undefined : readDate(by.published);
  if (published?.ok === false) faults.at(`${at}/superseded_by/published`, published.reason);
  const isItself =
    sameName(document, by.document) &&
    (revision === undefined || by.revision === undefined || sameName(revision, by.revision));
  if (isItself) {
    faults.at(
      `${at}/superseded_by`,
      'A document cannot take its own place: name the old `revision` and the new one.',
      [],
      true,
    );
  }
  if (faults.faults.length > before) return undefined;
  return { document, ...(revision === undefined ? {} : { revision }), by, ...history };
}

/** Reads an entry of `raises` that has the form of the schema; undefined when something in it cannot be right. */
export function readRaise(stated: StatedRaise, at: string, faults: FaultList): Raise | undefined {
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'entry', faults);
  if (faults.faults.length > before) return undefined;
  return { rule: stated.rule, to: stated.to, why: stated.why, source: stated.source, ...history };
}
