import { formatDay } from '../quantity/format-day.ts';
import { inVinRange } from './vin-range.ts';
import { maySameMarket } from './same-market.ts';
import { sameName } from './same-name.ts';

export interface CoveredVehicle {
  readonly maker?: string | undefined;
  readonly model?: string | undefined;
  readonly body?: string | undefined;
  readonly modelYear?: number | undefined;
  readonly vin?: string | undefined;
  /** Days since 1970-01-01. */
  readonly buildDate?: number | undefined;
  readonly plant?: string | undefined;
  readonly market?: string | undefined;
}

/** What a document states about the vehicles that it is for. All ends are included; build dates are days since 1970-01-01. */
export interface Covers {
  readonly maker?: string | undefined;
  readonly models?: readonly string[] | undefined;
  readonly bodies?: readonly string[] | 'all' | undefined;
  readonly years?: { readonly from: number; readonly to: number } | undefined;
  readonly vinRange?: { readonly from: string; readonly to: string } | undefined;
  /** An end that the document does not state is open. */
  readonly buildRange?: { readonly from?: number | undefined; readonly to?: number | undefined } | undefined;
  readonly plants?: readonly string[] | undefined;
  readonly markets?: readonly string[] | undefined;
}

export type CoverageMismatch =
  'maker' | 'model' | 'body' | 'year' | 'vin range' | 'build date' | 'plant' | 'market';

export type Coverage =
  | { readonly covers: 'yes' }
  | { readonly covers: 'no'; readonly because: readonly CoverageMismatch[]; readonly reason: string }
  | { readonly covers: 'cannot tell'; readonly missing: readonly string[]; readonly reason: string };

/** `mismatch` and `unclear` complete the sentence "It covers …" and "because …"; `missing` names what would settle it. */
type Answer =
  | 'match'
  | { readonly because: CoverageMismatch; readonly mismatch: string }
  | { readonly missing: string; readonly unclear: string };

/**
 * Whether a document is for this vehicle. Maker, model, body and model year must all be stated on both sides: a
 * document that does not say what it is for covers nothing. VIN range, build dates, plants and markets count only when
 * the document states them. One known mismatch settles it, whatever else is unknown.
 */
export function coverage(vehicle: CoveredVehicle, covers: Covers | undefined): Coverage {
  if (covers === undefined) {
    const reason = 'The reference does not say which vehicles it covers.';
    return { covers: 'cannot tell', missing: ['what the reference covers'], reason };
  }
  const answers: readonly Answer[] = [
    oneName(
      'maker',
      vehicle.maker,
      covers.maker === undefined ? undefined : [covers.maker],
      "the reference's maker",
    ),
    oneName('model', vehicle.model, covers.models, "the reference's models"),
    covers.bodies === 'all'
      ? 'match'
      : oneName('body', vehicle.body, covers.bodies, "the reference's bodies"),
    modelYear(vehicle.modelYear, covers.years),
    vinRange(vehicle.vin, covers.vinRange),
    buildDate(vehicle.buildDate, covers.buildRange),
    covers.plants === undefined
      ? 'match'
      : oneName('plant', vehicle.plant, covers.plants, "the reference's plants"),
    oneMarket(vehicle.market, covers.markets),
  ];

  const mismatches = answers.flatMap((answer) => (answer !== 'match' && 'because' in answer ? [answer] : []));
  if (mismatches.length > 0) {
    const reason = `The reference covers ${mismatches.map((answer) => answer.mismatch).join('; ')}.`;
    return { covers: 'no', because: mismatches.map((answer) => answer.because), reason };
  }
  const unclear = answers.flatMap((answer) => (answer !== 'match' && 'missing' in answer ? [answer] : []));
  if (unclear.length > 0) {
    const reason = `Whether the reference covers this vehicle cannot be told: ${unclear.map((answer) => answer.unclear).join('; ')}.`;
    return { covers: 'cannot tell', missing: unclear.map((answer) => answer.missing), reason };
  }
  return { covers: 'yes' };
}

function oneName(
  what: 'maker' | 'model' | 'body' | 'plant',
  own: string | undefined,
  covered: readonly string[] | undefined,
  coveredName: string,
): Answer {
  const names = covered?.filter((name) => name.trim() !== '') ?? [];
  if (names.length === 0) return notStated(coveredName);
  if (own === undefined || own.trim() === '') return notStated(`the vehicle's ${what}`);
  if (names.some((name) => sameName(name, own))) return 'match';
  return { because: what, mismatch: `${what} ${names.join(', ')}, not ${own.trim()}` };
}

function oneMarket(own: string | undefined, covered: Covers['markets']): Answer {
  if (covered === undefined || covered.length === 0) return 'match';
  if (own === undefined) return notStated("the vehicle's market");
  if (covered.some((one) => maySameMarket(one, own))) return 'match';
  return { because: 'market', mismatch: `market ${covered.join(', ')}, not ${own}` };
}

function modelYear(own: number | undefined, covered: Covers['years']): Answer {
  if (covered === undefined) return notStated("the reference's model years");
  // Written so that an end that is not a number counts as crossed, too.
  if (!(covered.from <= covered.to)) {
    return crossed("the reference's model years", `${covered.from} to ${covered.to}`);
  }
  if (own === undefined || !Number.isFinite(own)) return notStated("the vehicle's model year");
  if (own >= covered.from && own <= covered.to) return 'match';
  const years =
    covered.from === covered.to ? `year ${covered.from}` : `years ${covered.from} to ${covered.to}`;
  return { because: 'year', mismatch: `model ${years}, not ${own}` };
}

function vinRange(own: string | undefined, covered: Covers['vinRange']): Answer {
  if (covered === undefined) return 'match';
  if (own === undefined || own.trim() === '') return notStated("the vehicle's identification number");
  const answer = inVinRange(own, covered);
  if (answer === 'inside') return 'match';
  if (answer === 'outside') {
    return {
      because: 'vin range',
      mismatch: `identification numbers ${covered.from} to ${covered.to}, not ${own.trim()}`,
    };
  }
  return { missing: "the vehicle's place in the reference's VIN range", unclear: answer.cannotTell };
}

function buildDate(own: number | undefined, covered: Covers['buildRange']): Answer {
  if (covered === undefined) return 'match';
  const { from, to } = covered;
  if (from === undefined && to === undefined) return notStated("the reference's first and last build date");
  const first = from ?? Number.NEGATIVE_INFINITY;
  const last = to ?? Number.POSITIVE_INFINITY;
  if (!(first <= last)) return crossed("the reference's build dates", `${day(first)} to ${day(last)}`);
  if (own === undefined || !Number.isFinite(own)) return notStated("the vehicle's build date");
  if (own >= first && own <= last) return 'match';
  return { because: 'build date', mismatch: `build dates ${datesFrom(first, last)}, not ${day(own)}` };
}

function datesFrom(first: number, last: number): string {
  if (first === Number.NEGATIVE_INFINITY) return `until ${day(last)}`;
  return last === Number.POSITIVE_INFINITY ? `from ${day(first)} on` : `${day(first)} to ${day(last)}`;
}

function day(count: number): string {
  return Number.isFinite(count) ? formatDay(count) : 'no date';
}

function notStated(what: string): Answer {
  return {
    missing: what,
    unclear: `${what} ${/years$|models$|bodies$|plants$/u.test(what) ? 'are' : 'is'} not stated`,
  };
}

function crossed(what: string, range: string): Answer {
  return { missing: what, unclear: `${what} begin after they end (${range})` };
}
