import type { EntryFault } from '../plan/entry-fault.ts';
import type { OperationSurvey, PartSurvey } from './survey.ts';

/**
 * A part that is replaced whole twice, or the same replacement or cut written twice: copied by mistake, and every number of it is read
 * twice. Heating and grinding are done again and again; they are left out.
 */
export function doubledOperations({ operations }: PartSurvey): readonly EntryFault[] {
  const meant = operations.filter(
    ({ operation }) => operation.planned !== false || operation.done !== undefined,
  );
  return meant.flatMap((one, index): readonly EntryFault[] => {
    const word = one.operation.do;
    if (word !== 'replace' && word !== 'section' && word !== 'butt weld') return [];
    if (!meant.slice(0, index).some((earlier) => isSame(earlier, one))) return [];
    return [
      {
        fault: 'listed twice',
        pointer: `${one.at}/do`,
        sentence: `\`${word}\` of this part stands above already${word === 'replace' ? '; it is replaced once' : ''}.`,
      },
    ];
  });
}

function isSame(one: OperationSurvey, other: OperationSurvey): boolean {
  if (one.operation.do !== other.operation.do) return false;
  const areWhole = one.operation.do === 'replace' && one.cutsPartWay === false && other.cutsPartWay === false;
  return areWhole || JSON.stringify(one.operation) === JSON.stringify(other.operation);
}
