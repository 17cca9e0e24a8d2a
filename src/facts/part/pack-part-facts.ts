import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import { entriesForModel, isForSide, isForVehicle, whereItSays } from '../papers/maker-applies.ts';
import { quantityOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { sharesSide } from './side-named.ts';

type PackPartFact =
  | 'part.pack_material'
  | 'part.pack_material_text'
  | 'part.thickness_off_pack'
  | 'part.pack_thickness'
  | 'part.pack_one_piece'
  | 'part.pack_layer_missing';

const noEntry = 'No vehicle pack says what this part is.';

/** What the plan says of a part against what the maker's document says, as typed into the vehicle packs. */
export function packPartFacts(
  survey: Survey,
  one: PartSurvey,
): Readonly<Record<PackPartFact & FactNames['part'], Fact>> {
  const { part, at, pack } = one;
  const material = pack?.answer.material;
  const said = [pack?.answer.entry.grade, material?.class].filter((word) => word !== undefined).join(', ');
  const thickness = pack?.answer.entry.thicknessMm;
  const own = pack?.completed.has('thickness') === true ? undefined : quantityOf(part.thickness, 'length');
  const onePiece = pack?.answer.entry.onePiece;
  return {
    'part.pack_material': computed(pack?.how ?? 'not in the packs', `${at}/grade`),
    'part.pack_material_text': computedOr(
      said === '' || pack === undefined ? undefined : `${said} (${pack.answer.saidBy})`,
      `${at}/grade`,
      noEntry,
    ),
    'part.thickness_off_pack':
      thickness === undefined || own === undefined
        ? unknown('The plan or the pack does not state the thickness.', `${at}/thickness`)
        : computed(Math.abs(own - thickness), `${at}/thickness`),
    'part.pack_thickness': computedOr(thickness, `${at}/thickness`, noEntry),
    'part.pack_one_piece': computed(
      onePiece === undefined
        ? 'not in the packs'
        : pack?.onePieceStated === undefined || pack.onePieceStated === onePiece
          ? 'agrees'
          : 'differs',
      `${at}/one_piece`,
    ),
    'part.pack_layer_missing': computedOr(
      layerMissing(survey, one),
      `${at}/over`,
      'No vehicle pack names a part under it that the plan lacks.',
    ),
  };
}

/** Parts that the maker's document lays under this one, on its side, and that the plan does not list. */
function layerMissing(survey: Survey, { part }: PartSurvey): string | undefined {
  const { vehicle } = survey.plan;
  const missing = entriesForModel(vehicle, survey.context.makers, ({ parts }) => parts ?? []).filter(
    ({ entry }) =>
      part.kind !== undefined &&
      entry.under.includes(part.kind) &&
      isForVehicle(entry, vehicle, false) &&
      isForSide(entry, part.side, true) &&
      !survey.parts.some((other) => other.part.kind === entry.part && sharesSide(other.part.side, part.side)),
  );
  const named = missing.map(({ pack, entry }) => `${entry.part} (${whereItSays(entry, pack)})`);
  return [...new Set(named)].join('; ') || undefined;
}
