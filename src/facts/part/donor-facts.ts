import { sameName } from '../../vehicle/same-name.ts';
import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';

type DonorFact = 'part.second_hand' | 'part.refurbished' | 'part.donor' | 'part.donor_cited';
type Donor = NonNullable<PartSurvey['part']['donor']>;

/** A second-hand part: from which vehicle, and whether that was sound where the part sat. */
export function donorFacts(survey: Survey, { part, at }: PartSurvey): Readonly<Record<DonorFact, Fact>> {
  const place = `${at}/donor`;
  const secondHand =
    part.condition === 'recycled' || part.condition === 'refurbished' || part.donor !== undefined;
  return {
    'part.second_hand': computed(secondHand, `${at}/condition`),
    'part.refurbished': computed(part.condition === 'refurbished', `${at}/condition`),
    'part.donor': secondHand
      ? computed(donorAgrees(survey, part.donor ?? {}), place)
      : unknown('The part is not second-hand.', place),
    'part.donor_cited': computed(
      listOf(part.donor?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      `${place}/cite`,
    ),
  };
}

function donorAgrees(
  survey: Survey,
  donor: Donor,
): 'same' | 'other vehicle' | 'this vehicle' | 'not fully stated' | 'told in words' | 'damaged' {
  const { vehicle } = survey.plan;
  const pairs = [
    [donor.maker, vehicle.maker],
    [donor.model, vehicle.model],
    [donor.body, vehicle.body],
    [donor.model_year?.toString(), vehicle.model_year?.toString()],
  ] as const;
  if (donor.at_this_part === 'damaged') return 'damaged';
  if (pairs.some(([theirs, ours]) => theirs !== undefined && ours !== undefined && !sameName(theirs, ours))) {
    return 'other vehicle';
  }
  const own = [vehicle.vin, vehicle.frame_number].filter((number) => number !== undefined);
  if (own.some((number) => donor.vin !== undefined && sameName(number, donor.vin))) return 'this vehicle';
  if (donor.vin === undefined || pairs.some(([theirs, ours]) => theirs === undefined || ours === undefined)) {
    return 'not fully stated';
  }
  return history(donor);
}

/** The whole answer, or one that is said of this very part: "none at this part; front hit". */
const noDamage =
  /^(?:none|no damage|undamaged)(?: known| seen| found)?(?:[.;]?$| (?:at|on|to) (?:this|the|that) part(?:$|[.,;:]))/i;

/** Words decide only where they are as plain as a key. */
function history({ at_this_part: state, damage }: Donor): 'same' | 'not fully stated' | 'told in words' {
  if (state === 'sound') return 'same';
  if (state !== undefined || damage === undefined) return 'not fully stated';
  return noDamage.test(damage.trim()) ? 'same' : 'told in words';
}
