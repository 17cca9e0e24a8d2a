import type { Coat } from '../coating/coat.ts';
import { coatOf } from '../coating/coat.ts';
import { outsideFamily } from '../table/family-window.ts';
import type { GradeRow } from '../table/grade-row.ts';
import { isStandard } from '../table/standard-hint.ts';
import { aluminiumNames } from './aluminium-names.ts';
import { aluminiumSymbols } from './aluminium-symbols.ts';
import { americanNames } from './american-names.ts';
import { boronNames } from './boron-names.ts';
import { chineseNames } from './chinese-names.ts';
import { compositeNames, plasticNames } from './composite-names.ts';
import { europeanNames } from './european-names.ts';
import { germanNames } from './german-names.ts';
import { japaneseNames } from './japanese-names.ts';
import { magnesiumNames } from './magnesium-names.ts';
import type { NameForm } from './name-form.ts';
import { numberNames } from './number-names.ts';
import { stainlessNames } from './stainless-names.ts';
import { tradePairs } from './trade-pairs.ts';
import { vdaNames } from './vda-names.ts';

export type NameAnswer =
  | {
      readonly row: GradeRow;
      readonly coat: Coat;
      /** True where only the family hangs on the name, so that the missing row of the table takes nothing away. */
      readonly sure: boolean;
      /** True where no sheet of the family has such strengths. */
      readonly outside: boolean;
      /** The same name with its number taken as the tensile strength, where speakers differ. */
      readonly other?: GradeRow;
    }
  | { readonly fault: string };

const forms: readonly NameForm[] = [
  ...europeanNames,
  ...boronNames,
  ...vdaNames,
  ...chineseNames,
  ...japaneseNames,
  ...americanNames,
  ...germanNames,
  ...stainlessNames,
  ...numberNames,
  ...aluminiumNames,
  ...aluminiumSymbols,
  ...magnesiumNames,
  ...compositeNames,
  ...tradePairs,
  ...plasticNames,
];

/**
 * Reads a comparison key by the way the standards form their names; the first form that fits counts. `standard` is the one
 * that the text names, as a comparison key: forms of others are then passed over.
 */
export function readName(key: string, standard: string | undefined): NameAnswer | undefined {
  for (const { form, standards, read, onlyNamed, mass } of forms) {
    if (standard === undefined ? onlyNamed === true : !isOneOf(standards, standard)) continue;
    const match = form.exec(key);
    if (match === null) continue;
    const content = read(match.groups ?? {});
    if (content === undefined) continue;
    if ('fault' in content) return content;
    const { coating, sure, either, ...strengths } = content;
    const coat = coatOf(match.groups ?? {}, mass ?? 'european');
    const trade = standards.length === 0;
    const own = standard === undefined ? standards : standards.filter((one) => isStandard(one, standard));
    const row: GradeRow = {
      designation: key,
      standard: trade ? 'trade name' : own.join(' / '),
      ...strengths,
      state: strengths.state ?? (trade ? 'unknown' : 'as delivered'),
      mark: trade ? 'practice' : 'memory',
    };
    const other = either === true ? asTensile(row) : undefined;
    return {
      row,
      coat: coating === undefined ? coat : { coating, ...coat },
      sure: trade || sure === true,
      outside: outsideFamily(strengths) && (other === undefined || outsideFamily(other)),
      ...(other === undefined ? {} : { other }),
    };
  }
  return undefined;
}

function asTensile({ yieldMinMpa, ...row }: GradeRow): GradeRow {
  return yieldMinMpa === undefined ? row : { ...row, tensileMinMpa: yieldMinMpa };
}

function isOneOf(standards: readonly string[], named: string): boolean {
  return standards.some((one) => isStandard(one, named));
}
