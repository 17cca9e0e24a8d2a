import type { OperationWord } from '../generated/plan-types.ts';

/** The operation as a noun, for the middle of a sentence. */
export const operationNouns: Readonly<Record<OperationWord, string>> = {
  replace: 'replacement',
  section: 'sectioning',
  'butt weld': 'butt welding',
  heat: 'heating',
  straighten: 'straightening',
  weld: 'welding',
  braze: 'brazing',
  bond: 'bonding',
  rivet: 'riveting',
  drill: 'drilling',
  grind: 'grinding',
  fill: 'filling',
  'cut for access': 'cutting for access',
  refinish: 'refinishing',
  bake: 'baking',
  'remove and refit': 'removal and refitting',
  leave: 'leaving as it is',
};
