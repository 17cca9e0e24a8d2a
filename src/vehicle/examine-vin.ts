import { checkDigit } from './check-digit.ts';
import { readVin } from './identification-number.ts';
import type { VinFault } from './identification-number.ts';
import { marketRules } from './market.ts';
import type { Market } from './market.ts';
import { modelYears } from './model-years.ts';

export interface VinExamination {
  readonly form: 'in form' | VinFault;
  readonly checkDigit:
    | 'agrees'
    | 'disagrees'
    | 'not a check character'
    | 'not required'
    | 'market unknown and agrees'
    | 'market unknown and disagrees'
    | 'not in form';
  /** Absent when the number is not in form or the market requires no check digit. */
  readonly expectedCheckDigit?: string;
  /** Candidates for the model year, the earlier first; empty unless `yearCode` is `read`. */
  readonly years: readonly number[];
  readonly yearCode: 'read' | 'not a year code' | 'not required' | 'market unknown' | 'not in form';
  readonly serial:
    | 'as required'
    | 'letter among the last five'
    | 'letter among the last four'
    | 'letter fifth from the end, weight class unknown'
    | 'not required'
    | 'market unknown'
    | 'not in form';
  /** The first character is 0, which ISO 3780 gives to no region: no maker can own this number. */
  readonly trainingNumber: boolean;
}

/**
 * What a vehicle identification number says under the rules of its market; facts only, the rule packs judge them.
 * `light`: a car, or a multipurpose vehicle or truck up to 4536 kg gross rating; undefined when the class is not stated,
 * which leaves both model years open.
 */
export function examineVin(
  text: string,
  market: Market | undefined,
  light: boolean | undefined,
): VinExamination {
  const reading = readVin(text);
  if (!reading.ok) {
    return {
      form: reading.fault,
      checkDigit: 'not in form',
      years: [],
      yearCode: 'not in form',
      serial: 'not in form',
      trainingNumber: false,
    };
  }
  const { vin } = reading;
  return {
    form: 'in form',
    ...examineCheckDigit(vin, market),
    ...examineYear(vin, market, light),
    serial: examineSerial(vin, market, light),
    trainingNumber: vin.startsWith('0'),
  };
}

function examineCheckDigit(
  vin: string,
  market: Market | undefined,
): Pick<VinExamination, 'checkDigit' | 'expectedCheckDigit'> {
  if (market !== undefined && !marketRules(market).checkDigit) return { checkDigit: 'not required' };
  const written = vin.charAt(8);
  const expected = checkDigit(vin)?.digit;
  const shown = expected === undefined ? {} : { expectedCheckDigit: expected };
  const agrees = written === expected;
  if (market === undefined) {
    return { checkDigit: agrees ? 'market unknown and agrees' : 'market unknown and disagrees', ...shown };
  }
  if (!/[0-9X]/u.test(written)) return { checkDigit: 'not a check character', ...shown };
  return { checkDigit: agrees ? 'agrees' : 'disagrees', ...shown };
}

function examineYear(
  vin: string,
  market: Market | undefined,
  light: boolean | undefined,
): Pick<VinExamination, 'years' | 'yearCode'> {
  // A year read from a number that encodes none would look like proof, so nothing is decoded on suspicion.
  if (market === undefined) return { years: [], yearCode: 'market unknown' };
  const rules = marketRules(market);
  if (!rules.yearCode) return { years: [], yearCode: 'not required' };
  const years = modelYears(vin, rules.seventhPlace && light === true);
  return { years, yearCode: years.length === 0 ? 'not a year code' : 'read' };
}

function examineSerial(
  vin: string,
  market: Market | undefined,
  light: boolean | undefined,
): VinExamination['serial'] {
  if (market === undefined) return 'market unknown';
  if (!marketRules(market).serialDigits) return 'not required';
  if (light === true) return /\d{5}$/u.test(vin) ? 'as required' : 'letter among the last five';
  if (!/\d{4}$/u.test(vin)) return 'letter among the last four';
  const fifthIsDigit = /\d{5}$/u.test(vin);
  return light === undefined && !fifthIsDigit
    ? 'letter fifth from the end, weight class unknown'
    : 'as required';
}
