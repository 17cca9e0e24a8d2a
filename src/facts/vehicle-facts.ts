import type { FactNames } from '../generated/fact-names.ts';
import type { Plan, PlanVehicle } from '../generated/plan-types.ts';
import { examineVin } from '../vehicle/examine-vin.ts';
import { readFrameNumber } from '../vehicle/frame-number.ts';
import { readVin } from '../vehicle/identification-number.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, stated, statedOr, unknown } from './make-fact.ts';
import { numberOfItsTime } from './number-of-its-time.ts';
import { confirmedOnPaper, numberFromPaper } from './number-place.ts';
import { highVoltageNamed } from './high-voltage-named.ts';
import { dayOf, listOf } from './quantity-of.ts';
import { isSamePlace } from './same-place.ts';

type VehicleFacts = Readonly<Record<FactNames['vehicle'], Fact>>;

/** The vehicle: who it is, by what number, and what of that agrees. */
export function vehicleFacts(plan: Plan): VehicleFacts {
  const { vehicle } = plan;
  const at = '/vehicle';
  const drive = listOf(vehicle.drive);
  return {
    'vehicle.named': computed(vehicle.maker !== undefined && vehicle.model !== undefined, at),
    'vehicle.body': statedOr(vehicle.body, `${at}/body`, 'The body style is not stated.'),
    'vehicle.model_year': statedOr(vehicle.model_year, `${at}/model_year`, 'The model year is not stated.'),
    'vehicle.model_year_from': statedOr(
      vehicle.model_year_from,
      `${at}/model_year_from`,
      'The plan does not say how the model year was established.',
    ),
    'vehicle.build_date': statedOr(
      vehicle.build_date,
      `${at}/build_date`,
      'The day of building is not stated.',
    ),
    'vehicle.build_date_fits': buildDateFits(vehicle),
    'vehicle.market': statedOr(vehicle.market, `${at}/market`, 'The market is not stated.'),
    'vehicle.drive':
      drive.length === 0
        ? unknown('The kind of drive is not stated.', `${at}/drive`)
        : stated(drive, `${at}/drive`),
    'vehicle.high_voltage': highVoltage(plan),
    'vehicle.high_voltage_named': computedOr(
      highVoltageNamed(plan),
      `${at}/drive`,
      'The plan names nothing that only a vehicle with traction voltage has.',
    ),
    ...numberFacts(vehicle),
    'vehicle.number_place_stated': computed(vehicle.read_from !== undefined, `${at}/read_from`),
    'vehicle.number_from_paper': computedOr(
      numberFromPaper(vehicle),
      `${at}/read_from`,
      'The number was read on the vehicle, or the words do not tell.',
    ),
    'vehicle.number_confirmed_on_paper': computedOr(
      confirmedOnPaper(vehicle),
      `${at}/confirmed_at`,
      'The second place is on the vehicle, or the words do not tell, or neither is.',
    ),
    'vehicle.number_confirmed': computed(vehicle.confirmed_at !== undefined, `${at}/confirmed_at`),
    'vehicle.number_read_once': computed(
      isSamePlace(vehicle.read_from, vehicle.confirmed_at),
      `${at}/confirmed_at`,
    ),
  };
}

/** A model year is built from the calendar year before it to its own (40 CFR 85.2304, from memory; elsewhere common practice). */
function buildDateFits({ build_date: built, model_year: modelYear }: PlanVehicle): Fact {
  const at = '/vehicle/build_date';
  const day = dayOf(built);
  if (built === undefined || day === undefined || modelYear === undefined) {
    return unknown('Model year or day of building is not stated.', at);
  }
  const year = Number(built.slice(0, 4));
  return computed(year === modelYear || year === modelYear - 1, at);
}

/** Drives with a traction battery above 60 V DC, the limit of UN R100 (from memory); a 48 V mild hybrid lies below it. */
const highVoltageDrives: ReadonlySet<string> = new Set([
  'hybrid',
  'plug-in-hybrid',
  'battery-electric',
  'fuel-cell',
]);

function highVoltage(plan: Plan): Fact {
  const drive = listOf(plan.vehicle.drive);
  const at = '/vehicle/drive';
  if (drive.length === 0) return unknown('The kind of drive is not stated.', at);
  if (drive.some((word) => highVoltageDrives.has(word))) return computed(true, at);
  const named = highVoltageNamed(plan);
  if (named === undefined) return computed(false, at);
  return unknown(`The drive is stated as ${drive.join(', ')}, and yet the plan names ${named}.`, at);
}

type NumberFact =
  | 'vehicle.identity'
  | 'vehicle.number'
  | 'vehicle.number_form'
  | 'vehicle.number_reading'
  | 'vehicle.check_digit'
  | 'vehicle.check_digit_expected'
  | 'vehicle.year_code'
  | 'vehicle.years_by_code'
  | 'vehicle.serial'
  | 'vehicle.training_number';

function numberFacts(vehicle: PlanVehicle): Readonly<Record<NumberFact, Fact>> {
  const old = numberOfItsTime(vehicle);
  if (old !== undefined) return oldNumberFacts(old);
  if (vehicle.vin !== undefined) return vinFacts(vehicle, vehicle.vin);
  if (vehicle.frame_number !== undefined) return frameNumberFacts(vehicle.frame_number);
  const none = unknown('Neither identification nor frame number is written.', '/vehicle');
  return {
    ...sameForAll(none),
    'vehicle.identity': computed('none', '/vehicle'),
    'vehicle.training_number': computed(false, '/vehicle'),
  };
}

function sameForAll(fact: Fact): Readonly<Record<NumberFact, Fact>> {
  return {
    'vehicle.identity': fact,
    'vehicle.number': fact,
    'vehicle.number_form': fact,
    'vehicle.number_reading': fact,
    'vehicle.check_digit': fact,
    'vehicle.check_digit_expected': fact,
    'vehicle.year_code': fact,
    'vehicle.years_by_code': fact,
    'vehicle.serial': fact,
    'vehicle.training_number': fact,
  };
}

/** Before 1981 each maker numbered as it liked: there is no form, no check digit and no year to be read off it. */
function oldNumberFacts({
  text,
  key,
}: NonNullable<ReturnType<typeof numberOfItsTime>>): Readonly<Record<NumberFact, Fact>> {
  const at = `/vehicle/${key}`;
  const none = unknown('A number of that time carries none.', at);
  return {
    ...sameForAll(computed('not required', at, 'Built before numbers of 17 characters were due.')),
    'vehicle.identity': computed(key === 'vin' ? 'vin' : 'frame number', at),
    'vehicle.number': stated(text, at),
    'vehicle.number_form': computed('of its time', at),
    'vehicle.number_reading': none,
    'vehicle.check_digit_expected': none,
    'vehicle.years_by_code': none,
    'vehicle.training_number': computed(false, at),
  };
}

function frameNumberFacts(frameNumber: string): Readonly<Record<NumberFact, Fact>> {
  const at = '/vehicle/frame_number';
  const reading = readFrameNumber(frameNumber);
  return {
    ...sameForAll(computed('not required', at, 'A home-market frame number carries none.')),
    'vehicle.identity': computed('frame number', at),
    'vehicle.number': stated(frameNumber, at),
    'vehicle.number_form': computed(reading.ok ? 'right' : 'frame number form', at),
    'vehicle.number_reading': reading.ok
      ? unknown('Nothing is wrong with the number.', at)
      : computed(reading.reason, at),
    'vehicle.check_digit_expected': unknown('A frame number has no check digit.', at),
    'vehicle.years_by_code': unknown('A frame number carries no year.', at),
    'vehicle.training_number': computed(false, at),
  };
}

function vinFacts(vehicle: PlanVehicle, vin: string): Readonly<Record<NumberFact, Fact>> {
  const at = '/vehicle/vin';
  const light = vehicle.weight_class === undefined ? undefined : vehicle.weight_class === 'light';
  const seen = examineVin(vin, vehicle.market, light);
  const reading = readVin(vin);
  const notInForm = unknown('The identification number is not in form.', at);
  const noMarket = unknown('The market that decides it is not stated.', '/vehicle/market');
  return {
    'vehicle.identity': computed('vin', at),
    'vehicle.number': stated(vin, at),
    'vehicle.number_form': computed(reading.ok ? 'right' : formWord[reading.fault], at),
    'vehicle.number_reading': reading.ok
      ? unknown('Nothing is wrong with the number.', at)
      : computed(reading.reason, at),
    'vehicle.check_digit': seen.checkDigit === 'not in form' ? notInForm : computed(seen.checkDigit, at),
    'vehicle.check_digit_expected': computedOr(
      seen.expectedCheckDigit,
      at,
      'The market requires no check digit, or the number is not in form.',
    ),
    'vehicle.year_code': yearCode(vehicle, seen, notInForm, noMarket),
    'vehicle.years_by_code':
      seen.years.length === 0
        ? unknown('The market puts no year into the number.', at)
        : computed(seen.years.join(' or '), at),
    'vehicle.serial': serial(seen, notInForm, noMarket),
    'vehicle.training_number': computed(seen.trainingNumber, at),
  };
}

const formWord = { length: 'length', 'letters I, O, Q': 'letters I, O, Q', character: 'character' } as const;

function yearCode(
  vehicle: PlanVehicle,
  seen: ReturnType<typeof examineVin>,
  notInForm: Fact,
  noMarket: Fact,
): Fact {
  const at = '/vehicle/vin';
  switch (seen.yearCode) {
    case 'not in form':
      return notInForm;
    case 'market unknown':
      return noMarket;
    case 'not required':
    case 'not a year code':
      return computed(seen.yearCode, at);
    case 'read':
      if (vehicle.model_year === undefined) {
        return unknown('The model year is not stated.', '/vehicle/model_year');
      }
      if (!seen.years.includes(vehicle.model_year)) return computed('disagrees', at);
      if (seen.years.length === 1) return computed('agrees', at);
      return yearOfTwo(vehicle, vehicle.model_year, at);
  }
}

/** Two years thirty apart remain. Which one it is, the seventh place tells for a light vehicle only. */
function yearOfTwo(vehicle: PlanVehicle, modelYear: number, at: string): Fact {
  if (vehicle.weight_class === 'heavy') return computed('open', at);
  if (examineVin(vehicle.vin ?? '', vehicle.market, true).years.includes(modelYear)) {
    return computed('agrees', at);
  }
  return unknown(
    'The number says another year if this is a light vehicle; the weight class is not stated.',
    '/vehicle/weight_class',
  );
}

function serial(seen: ReturnType<typeof examineVin>, notInForm: Fact, noMarket: Fact): Fact {
  const at = '/vehicle/vin';
  switch (seen.serial) {
    case 'not in form':
      return notInForm;
    case 'market unknown':
      return noMarket;
    case 'letter fifth from the end, weight class unknown':
      return unknown(
        'Whether a letter may stand fifth from the end depends on the weight class.',
        '/vehicle/weight_class',
      );
    case 'as required':
    case 'not required':
      return computed(seen.serial, at);
    case 'letter among the last five':
    case 'letter among the last four':
      return computed('letter among the last characters', at);
  }
}
