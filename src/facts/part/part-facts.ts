import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { anyYes } from '../tri-state.ts';
import type { TriState } from '../tri-state.ts';
import { assumed, computed, computedOr, known, stated, statedOr, tabled, unknown } from '../make-fact.ts';
import { donorFacts } from './donor-facts.ts';
import { insideProtection } from '../step/inside-protection.ts';
import { earlierRepairFacts } from './earlier-repairs.ts';
import { partHistoryFacts } from './part-history-facts.ts';
import { packPartFacts } from './pack-part-facts.ts';
import { partDamageFacts } from './part-damage-facts.ts';
import { partMaterialDoubts } from './part-material-doubts.ts';
import { partMaterialFacts } from './part-material-facts.ts';
import {
  canBeEither,
  carriesCrashLoad,
  carriesCrashLoadByStrength,
  closesHollowMember,
  usuallyCosmetic,
  loadNotTold,
} from './part-kinds.ts';
import { partStrengthFacts } from './part-strength-facts.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { makerShall } from '../papers/maker-statements.ts';
import { hidesStructure, layerBelow, layerUnseen } from './part-layers.ts';
import { isNamedForOtherSide } from './side-named.ts';
import { undeployedUnitStays, unitsQuestion } from '../step/restraint-units.ts';
import { listOf } from '../quantity-of.ts';
import { factGroups } from '../fact-groups.ts';
import type { FactGroups } from '../fact-groups.ts';
import type { PartSurvey, Survey } from '../survey.ts';

type PartFacts = Readonly<Record<FactNames['part'], Fact>>;

/** One part: what it is, what it carries, what was found on it. */
export const partFacts: FactGroups<[Survey, PartSurvey], FactNames['part']> = factGroups(
  ['part.'],
  kindFacts,
  partMaterialFacts,
  partMaterialDoubts,
  packPartFacts,
  partStrengthFacts,
  partDamageFacts,
  layerFacts,
  donorFacts,
  closedSectionFacts,
  insideProtection,
  partHistoryFacts,
  earlierRepairFacts,
  unitFacts,
  makerFacts,
);

type Group<Name extends FactNames['part']> = Pick<PartFacts, Name>;

function kindFacts(
  survey: Survey,
  one: PartSurvey,
): Group<`part.${'name' | 'named_for_other_side' | 'kind' | 'structural' | 'one_piece'}` | CosmeticFact> {
  const { part, at } = one;
  return {
    'part.name': computed(one.name, at),
    'part.named_for_other_side': computed(isNamedForOtherSide(part), `${at}/side`),
    'part.kind': kindFact(one),
    'part.structural': structuralFact(one),
    'part.declared_cosmetic': computed(
      carriesCrashLoad(part.kind) &&
        part.structural === false &&
        !listOf(part.cosmetic_by).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/structural`,
    ),
    'part.cosmetic_by_own_word': computed(
      part.structural === false &&
        canBeEither(part.kind) &&
        !listOf(part.cosmetic_by).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/structural`,
    ),
    'part.one_piece':
      part.one_piece !== undefined && one.pack?.answer.entry.onePiece === part.one_piece
        ? tabled(
            part.one_piece,
            `The maker’s document says so: ${one.pack.answer.saidBy}.`,
            `${at}/one_piece`,
          )
        : part.one_piece !== undefined
          ? stated(part.one_piece, `${at}/one_piece`)
          : part.kind === 'door ring'
            ? assumed(true, 'A door ring counts as one piece unless the plan says that it has joints.', at)
            : unknown('Whether it is made in one piece is not stated.', `${at}/one_piece`),
  };
}

type CosmeticFact = 'part.declared_cosmetic' | 'part.cosmetic_by_own_word';

function layerFacts(
  survey: Survey,
  one: PartSurvey,
): Group<`part.${'skin' | 'layer_below' | 'layer_unseen'}`> {
  const { at } = one;
  const unseen = layerUnseen(survey, one);
  return {
    'part.skin': computed(hidesStructure(survey, one), `${at}/kind`),
    'part.layer_below': computed(layerBelow(survey, one), `${at}/over`),
    'part.layer_unseen': computedOr(
      unseen?.text,
      unseen?.at ?? `${at}/over`,
      'Every layer under it that is listed was looked at, or none is listed.',
    ),
  };
}

function closedSectionFacts(_survey: Survey, one: PartSurvey): Group<'part.closed_section_worked'> {
  return {
    'part.closed_section_worked': triFact(
      closedSectionWorked(one),
      `${one.at}/closed_section`,
      'What is done to the hollow member cannot be told.',
    ),
  };
}

function unitFacts(survey: Survey, one: PartSurvey): Group<'part.holds_undeployed_unit' | 'part.lifted_on'> {
  const { id } = one.part;
  const point = id === undefined ? -1 : (survey.plan.make_safe?.lifting?.points ?? []).indexOf(id);
  return {
    'part.holds_undeployed_unit': triFact(
      undeployedUnitStays(survey, one),
      '/make_safe/restraints',
      unitsQuestion(survey, one),
    ),
    'part.lifted_on': computed(
      point >= 0,
      point < 0 ? '/make_safe/lifting' : `/make_safe/lifting/points/${String(point)}`,
    ),
  };
}

function makerFacts(survey: Survey, one: PartSurvey): Group<'part.shall' | 'part.shall_done'> {
  const { at } = one;
  const shall = makerShall(survey, one);
  return {
    'part.shall': computedOr(shall?.text, at, 'No pack says what shall be done with it.'),
    'part.shall_done': computedOr(shall?.done, at, 'No pack says what shall be done with it.'),
  };
}

function kindFact({ part, at, called }: PartSurvey): Fact {
  return called === undefined
    ? statedOr(part.kind, `${at}/kind`, 'What kind of part it is, is not stated.')
    : assumed(called, `It is called ${called} and is judged as one.`, `${at}/name`);
}

function structuralFact(one: PartSurvey): Fact {
  const { part, at, structural, material } = one;
  const place = `${at}/structural`;
  if (carriesCrashLoad(part.kind)) {
    return part.structural === true
      ? stated(true, place)
      : tabled(true, `A part of this kind carries load in a crash (common practice).`, `${at}/kind`);
  }
  if (carriesCrashLoadByStrength(material.class)) {
    return tabled(true, 'No cosmetic part is made of such steel (common practice).', `${at}/grade`);
  }
  if (part.structural !== undefined) return stated(part.structural, place);
  if (usuallyCosmetic(part.kind)) {
    return known(
      false,
      'table',
      `${at}/kind`,
      'A part of this kind carries no crash load (common practice).',
    );
  }
  return computedOr(structural, place, loadNotTold(one));
}

function closedSectionWorked({ part, operations }: PartSurvey): TriState {
  const closed = part.closed_section ?? closesHollowMember(part.kind);
  if (!closed) return false;
  return anyYes(
    operations.map(({ operation, cutsPartWay, hot, works }) =>
      cutsPartWay === true ||
      (operation.do === 'replace' && hot !== false) ||
      (works === true && hot === true)
        ? true
        : cutsPartWay === undefined && operation.do !== 'replace'
          ? undefined
          : false,
    ),
  );
}

function triFact(value: TriState, at: string, reason: string): Fact {
  return computedOr(value, at, reason);
}
