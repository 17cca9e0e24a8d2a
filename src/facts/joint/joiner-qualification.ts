import type { JointMethod } from '../../generated/plan-types.ts';
import { hasAdhesive, isArc, isResistance } from './joint-methods.ts';

/** What a person was tested in. Bonding and riveting are taught and tested together; who brazes by an arc welds by an arc. */
type Skill = 'arc' | 'brazing' | 'resistance' | 'cold joining';

export type JoinedMetal = 'steel' | 'aluminium';

/** What the text of a qualification names; an empty set where it names none, as "body structure level 3". */
export interface NamedSkills {
  readonly skills: ReadonlySet<Skill>;
  readonly metals: ReadonlySet<JoinedMetal>;
}

/**
 * Words that name a skill. ISO 9606-1 and -2 are welders of steel and of aluminium by an arc (from memory), ISO 13585 brazers (from
 * memory), ISO 14732 operators and setters of machines, so of spot welding (title seen).
 */
const skillWords: readonly (readonly [Skill, RegExp])[] = [
  ['arc', /\b9606|\b(?:arc|MAG|MIG|GMAW?|TIG|GTAW|(?:plug|seam|fusion).?weld\w*)\b(?!.?braz)/i],
  ['brazing', /braz|\b13585\b/i],
  ['resistance', /\b(?:resistance|spot|projection|squeeze)|\b14732\b|\b14554\b|\b15614-12\b/i],
  ['cold joining', /\b(?:bond|adhesive|glu(?:e|ing)|rivet|clinch|SPR\b|flow.drill)/i],
];

const metalWords: readonly (readonly [JoinedMetal, RegExp])[] = [
  ['steel', /\bsteels?\b|9606-1\b/i],
  ['aluminium', /\balumin|9606-2\b/i],
];

/** "Welder" and "welding" alone name every way to weld. */
const anyWelding = /\bweld/i;

export function namedSkills(qualification: string): NamedSkills {
  const skills = new Set(skillWords.filter(([, words]) => words.test(qualification)).map(([skill]) => skill));
  const isOnlyWelder = skills.size === 0 && anyWelding.test(qualification);
  return {
    skills: isOnlyWelder ? new Set(['arc', 'resistance']) : skills,
    metals: new Set(metalWords.filter(([, words]) => words.test(qualification)).map(([metal]) => metal)),
  };
}

/** Whether the text names other skills, or another metal, than a joint takes. A text that names none leaves that to the shop. */
export function namesOther(
  { skills, metals }: NamedSkills,
  method: JointMethod,
  joined: ReadonlySet<JoinedMetal>,
): boolean {
  const taken = skillsFor(method);
  const isOtherSkill = skills.size > 0 && taken.length > 0 && !taken.some((skill) => skills.has(skill));
  const isOtherMetal = metals.size > 0 && joined.size > 0 && ![...joined].some((metal) => metals.has(metal));
  return isOtherSkill || isOtherMetal;
}

/** One of these is enough; none is asked for where no test is usual. */
function skillsFor(method: JointMethod): readonly Skill[] {
  if (method === 'arc braze') return ['brazing', 'arc'];
  if (isArc(method)) return ['arc'];
  if (hasAdhesive(method)) return isResistance(method) ? ['cold joining', 'resistance'] : ['cold joining'];
  if (isResistance(method)) return ['resistance'];
  return method === 'hem' || method === 'bolt' ? [] : ['cold joining'];
}
