import { formatQuantity } from '../../quantity/format-quantity.ts';
import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import type { DatumState, Occasion } from './datum-state.ts';
import type { MeasuredBody } from './measured-body.ts';

type ExchangedFact = 'measurement.exchanged_before' | 'measurement.exchanged_after';

/**
 * Points whose rows look exchanged. Where they do so in both measurements it is their nominal places that are, and at the release that
 * is told once.
 */
export function exchangedFacts(
  { before, after }: MeasuredBody,
  isReleased: boolean,
): Readonly<Record<ExchangedFact, Fact>> {
  const isNominal = before !== undefined && after !== undefined && couplesOf(before) === couplesOf(after);
  return {
    'measurement.exchanged_before':
      isNominal && isReleased
        ? unknown('The same points are exchanged after the repair.', '/measurements/points')
        : exchanged(before, 'before', isNominal),
    'measurement.exchanged_after': exchanged(after, 'after', isNominal),
  };
}

function couplesOf({ exchanges }: DatumState): string {
  return exchanges.map(({ one, other }) => `${String(one.index)} ${String(other.index)}`).join(', ');
}

function exchanged(state: DatumState | undefined, occasion: Occasion, isNominal: boolean): Fact {
  const [first] = state?.exchanges ?? [];
  if (state === undefined || first === undefined) {
    return unknown(`No two points look exchanged ${occasion} the repair.`, '/measurements/points');
  }
  const said = state.exchanges.map(
    ({ one, other, asWrittenMm, putBackMm }) =>
      `${one.called} and ${other.called}, whose deviation falls from ${tenths(asWrittenMm)} to ${tenths(putBackMm)} once they are put back`,
  );
  const told =
    said.join('; ') +
    (isNominal ? '; it is so before and after, as where their nominal places are exchanged' : '');
  return computed(told, `${first.one.at}/${isNominal ? 'nominal' : occasion}`);
}

function tenths(mm: number): string {
  return formatQuantity(mm, 'mm', 1);
}
