import type { DesignationReading, KnownDesignation } from './known-designation.ts';
import { noteOf } from './known-designation.ts';
import { strongestFirst } from './merge-readings.ts';
import { readOne } from './read-one.ts';
import { blankParts } from './tailored-blank.ts';

/** Two or more sheets welded into one blank: both are kept, and the strongest counts. Undefined for any other text. */
export function readBlank(text: string): DesignationReading | undefined {
  for (const parts of blankParts(text)) {
    const known: KnownDesignation[] = [];
    for (const part of parts) {
      const reading = readOne(part);
      if (reading?.known === true) known.push(reading);
    }
    if (known.length < parts.length) continue;
    const ambiguity = known.flatMap((one) => one.ambiguity ?? []).join(' ');
    return {
      known: true,
      readings: strongestFirst(known.flatMap((one) => one.readings)),
      ...(ambiguity === '' ? {} : { ambiguity }),
      ...noteOf(
        [
          `The text names a blank of ${parts.length} sheets (${parts.join(', ')}); the strongest counts until the plan says in which sheet the work lies.`,
          ...known.flatMap((one) => one.assumed ?? []),
        ],
        ambiguity === '' ? undefined : ambiguity,
      ),
      warnings: [...new Set(known.flatMap((one) => one.warnings))],
      blank: parts,
    };
  }
  return undefined;
}
