import type { SettledMaterial } from '../../steel/settling/settle-material.ts';
import { steelRank } from '../../steel/strength-class.ts';
import { materialEvidence } from '../papers/maker-evidence.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/**
 * The sentence on a part whose twin of the other side is stated stronger, or as another metal; undefined for any other. The two are
 * built alike, so the weaker word is as likely the slip, and to cut on the strength of it is to cut what may be the stronger steel.
 *
 * A part that was replaced before may truly differ: then its own marking says so, or a page of its own that its twin does not cite.
 */
export function strongerTwin(survey: Survey, { at }: PartSurvey): string | undefined {
  // A cut in a zone sees the part as that zone; the two sides are compared whole, as they stand in the plan.
  const sides = survey.otherSide.get(at);
  if (sides === undefined) return undefined;
  const { own: one, other: twin } = sides;
  if (!isWeaker(one.material, twin.material) || isReadByItself(survey, one, twin)) return undefined;
  return `${one.name} is stated as ${said(one)}, and ${twin.name} as ${said(twin)}`;
}

function isWeaker({ class: own }: SettledMaterial, { class: other }: SettledMaterial): boolean {
  if (own === undefined || other === undefined || own === other) return false;
  const [mine, theirs] = [steelRank(own), steelRank(other)];
  // Steel beside aluminium: neither is the weaker, and one of the two is wrong.
  return mine === undefined || theirs === undefined || mine < theirs;
}

function isReadByItself(survey: Survey, { part }: PartSurvey, twin: PartSurvey): boolean {
  const evidence = materialEvidence(survey, part);
  if (evidence === 'marking on part') return true;
  if (evidence !== 'maker document') return false;
  const [own, other] = [part.grade_from, twin.part.grade_from];
  return own?.reference !== other?.reference || own?.at !== other?.at;
}

function said({ part, material }: PartSurvey): string {
  const words = part.grade ?? part.strength;
  return words === undefined ? String(material.class) : `${words} (${String(material.class)})`;
}
