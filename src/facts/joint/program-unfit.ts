import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { JointMatter } from './joint-matter.ts';

type ProgramFact = Extract<FactNames['joint'], 'joint.program_of_other_metal'>;

const aluminium = /\balu(?:mini?um)?\b|\bal[- ]?(?:mg|si)\w*\b/i;
const steel = /\bsteel\b/i;
const steels: ReadonlySet<string> = new Set([
  ...[
    'mild',
    'high-strength',
    'advanced high-strength',
    'ultra-high-strength',
    'press-hardened',
    'stainless',
  ],
]);

/** The program of the machine, where its name tells of aluminium and all sheets are steel, or the other way round. */
export function programFacts({ one: { joint, at }, laid }: JointMatter): Readonly<Record<ProgramFact, Fact>> {
  const program = joint.settings?.program;
  return {
    'joint.program_of_other_metal': computedOr(
      program !== undefined && isOfOther(program, laid.sheets) ? program : undefined,
      `${at}/settings/program`,
      'No program is named, its name tells of no metal, or the metal of a sheet is not known.',
    ),
  };
}

function isOfOther(program: string, sheets: JointMatter['laid']['sheets']): boolean {
  const [forAluminium, forSteel] = [aluminium.test(program), steel.test(program)];
  if (forAluminium === forSteel || sheets.length === 0) return false;
  return sheets.every((sheet) => {
    const metal = sheet?.material.class;
    return metal !== undefined && (forAluminium ? steels.has(metal) : metal === 'aluminium');
  });
}
