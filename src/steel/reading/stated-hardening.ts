import type { DesignationForm } from './designation-forms.ts';
import type { Material } from '../material.ts';
import { strongestFirst } from './merge-readings.ts';
import { steelFamily } from '../steel-family.ts';
import { steelRank } from '../strength-class.ts';

export interface StatedHardening {
  readonly readings: readonly Material[];
  readonly doubt?: string;
}

/**
 * A name that says "hardened" or "with soft zone" of a steel that nobody hardens: one of the two is wrong. Hardened steel counts,
 * since a slip in the grade is as likely as one in the word.
 */
export function withStatedHardening(
  { statedState, softZone }: DesignationForm,
  readings: readonly Material[],
): StatedHardening {
  const [first] = readings;
  const isSaid = statedState === 'hardened' || softZone === true;
  if (!isSaid || first === undefined || readings.some(canBeHardened)) return { readings };
  const { designation, mark } = first;
  const hardened: Material = {
    designation: `${designation}, hardened`,
    standard: 'trade name',
    family: steelFamily('press_hardening').word,
    class: 'press-hardened',
    condition: 'hardened',
    mark,
    from: 'trade word',
  };
  return {
    readings: strongestFirst([...readings, hardened]),
    doubt: `${designation} is not a steel that is hardened, and the text says that it is: one of the two is wrong. Hardened steel counts; read the drawing again.`,
  };
}

/** Steel that is hardened; and what is no steel, of which the word says something else. */
function canBeHardened({ class: of, family }: Material): boolean {
  return of === 'press-hardened' || family === steelFamily('martensitic').word || steelRank(of) === undefined;
}
