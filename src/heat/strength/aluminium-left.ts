import { peakOf, secondsAboveIn } from './history-measures.ts';
import type { TemperatureHistory } from '../point-history.ts';
import { strengthRange } from './strength-answer.ts';
import type { Delivered, StrengthKind, StrengthLeft } from './strength-answer.ts';

type Aluminium = Extract<StrengthKind, `aluminium ${string}`>;

interface Threshold {
  readonly mostCelsius: number;
  /** Above this the time counts, at most a day in all. */
  readonly countsFromCelsius: number;
  readonly beyond: string;
}

const dayInSeconds = 86400;

const thresholds: Readonly<Record<Aluminium, Threshold>> = {
  // Extrusions of 6061 and 6063-T6 kept their minimum 64 h at 177 °C; two stronger alloys lost it after 8 h at 177, 2 h
  // at 199 and 30 min at 218 °C (university thesis, studylib.net 18250899). By the rate these figures
  // give (110 kJ/mol) a day at 150 °C is less than 4 h at 177.
  'aluminium 6xxx T6': {
    mostCelsius: 150,
    countsFromCelsius: 100,
    beyond: 'strong 6xxx-T6 fell below its minimum within 30 min at 218 °C, 2 h at 199 °C',
  },
  // Painted body sheet stands between T4 and T6. Heat first hardens it further, then softens it.
  'aluminium 6xxx T4': {
    mostCelsius: 150,
    countsFromCelsius: 100,
    beyond: 'it first hardens and then over-ages, and no published curve tells how far',
  },
  // Annealed: nothing to lose but by grain growth. With more than 3 % magnesium a long time above 65 °C makes it corrode.
  'aluminium 5xxx O': {
    mostCelsius: 200,
    countsFromCelsius: 65,
    beyond: 'common practice sets 200 °C for annealed 5xxx sheet',
  },
  'aluminium 5xxx H': {
    mostCelsius: 150,
    countsFromCelsius: 65,
    beyond: 'strain hardening is lost by degrees above 150 °C',
  },
  'aluminium 7xxx': {
    mostCelsius: 120,
    countsFromCelsius: 80,
    beyond: 'it is aged at about 120 °C and over-ages above',
  },
};

/**
 * Tensile strength left in wrought aluminium sheet: a threshold each, all common practice; below, no loss, and a day
 * in all at most; above, unknown. No model of over-aging was found that holds for unnamed alloys.
 */
export function aluminiumLeft(
  kind: Aluminium,
  history: TemperatureHistory,
  { tensileMpa }: Delivered,
): StrengthLeft {
  const { mostCelsius, countsFromCelsius, beyond } = thresholds[kind];
  if (peakOf(history) > mostCelsius) {
    return { state: 'unknown', reason: `${kind} above ${mostCelsius} °C: ${beyond}` };
  }
  if (secondsAboveIn(history, countsFromCelsius) > dayInSeconds) {
    return {
      state: 'unknown',
      reason: `${kind} above ${countsFromCelsius} °C for more than a day: not covered`,
    };
  }
  return strengthRange(
    {
      of: 'tensile strength',
      leastPercent: 100,
      mostPercent: 100,
      howSure: 'common practice',
      note: `No loss is known up to ${mostCelsius} °C.`,
    },
    tensileMpa,
  );
}
