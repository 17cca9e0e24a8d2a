import type { ReadFault } from '../../src/plan/fault.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { placeOf } from '../../src/plan/source-text.ts';

/** `line:column-endLine:endColumn sentence`, so that a test reads like what a person is told. */
export function shownFault(fault: ReadFault, text: string): string {
  if (fault.range === undefined) return fault.sentence;
  const place = placeOf({ path: 'plan.yaml', text }, fault.range);
  return `${place.line}:${place.column}-${place.endLine}:${place.endColumn} ${fault.sentence}`;
}

export function shownFaults(text: string): readonly string[] {
  const reading = readYaml(text);
  return reading.ok ? [] : reading.faults.map((fault) => shownFault(fault, text));
}
