import type { Coat } from '../coating/coat.ts';
import type { GradeRow } from '../table/grade-row.ts';
import type { Material } from '../material.ts';
import { spelledStandard } from '../table/spell-standard.ts';
import { isTradeStep } from '../table/trade-grade.ts';

export function coatDoubts({ unlisted }: Coat): readonly string[] {
  if (unlisted === undefined) return [];
  return [
    `Sheet is not ordered with a coating ${unlisted}; read the drawing again, for one wrong sign may hide another steel.`,
  ];
}

export function tradeDoubts(readings: readonly Material[]): readonly string[] {
  const odd = readings.find((row) => row.from === 'trade word' && outsideOfTrade(row, readings));
  if (odd !== undefined) return [outsideDoubt(odd.designation, odd.family)];
  const offStep = readings.find((row) => row.from === 'trade word' && !isTradeStep(row.designation));
  return offStep === undefined
    ? []
    : [`Sheet is not made in the step of ${offStep.designation}; read the drawing again.`];
}

/** Readings by strength stand beside a trade name only where its figures lie outside its family. */
function outsideOfTrade(row: Material, readings: readonly Material[]): boolean {
  return readings.some((one) => one.from === 'strength' && one.designation === row.designation);
}

export function outsideDoubt(designation: string, family: string): string {
  return `No ${family} sheet has the strength that ${designation} names: the letters or a figure must be wrong. The strongest reading counts; read the drawing again.`;
}

export function eitherDoubt(designation: string): string {
  return `The number of ${designation} is the yield for some and the tensile strength for others (BH220 of Europe is near JSC340H). State the grade of the standard.`;
}

export function formDoubt({ designation, standard }: GradeRow): string {
  const forms = standard === 'national list' ? 'national lists form' : `${standard} forms`;
  return `The table has no row for ${designation}; it is read by the way ${forms} names. Look it up there.`;
}

export function otherStandard(rows: readonly GradeRow[], named: string): string {
  const [first] = rows;
  const own = [...new Set(rows.map((row) => row.standard))].join(', ');
  const of = own === 'trade name' ? 'a name of the trade, and no grade of it' : `a grade of ${own}`;
  return `The text names ${spelledStandard(named)}, but ${first?.designation ?? 'the grade'} is ${of}: one of the two is wrong. The strongest reading counts; read the drawing again.`;
}
