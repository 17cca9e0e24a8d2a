import type { UsedPack } from './plan-report.ts';
import { visibleText } from './visible-text.ts';
import { wrapText } from './wrap-text.ts';

export interface SignedPlan {
  readonly file: string;
  /** ISO 8601 calendar date. */
  readonly asOf: string;
  readonly signature: { readonly name: string; readonly role: string; readonly date: string };
  readonly digests: {
    readonly plan: string;
    readonly packs: readonly Pick<UsedPack, 'pack' | 'version' | 'digest'>[];
  };
}

/** What was signed, and what the signature is worth. */
export function signedText({ file, asOf, signature, digests }: SignedPlan, columns: number): string {
  const { name, role, date } = signature;
  const wrapped = (text: string): readonly string[] => wrapText(visibleText(text), columns, '    ', '  ');
  return [
    visibleText(file),
    ...wrapped(`Signed by ${name}, ${role}, on ${date}; cleared as of ${asOf}.`),
    ...wrapped(`Plan ${digests.plan}`),
    ...digests.packs.flatMap(({ pack, version, digest }) => wrapped(`Pack ${pack} ${version} ${digest}`)),
    ...wrapped(
      'The digests show when the plan or the packs are changed afterwards; check then holds the plan. They do not show who signed: whoever can write the file can sign it.',
    ),
    ...wrapped(
      'Cleared says that planish found nothing in the plan as written. It does not say that the repair is safe.',
    ),
    '',
  ].join('\n');
}
