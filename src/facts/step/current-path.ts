import type { FactNames } from '../../generated/fact-names.ts';
import type { Operation } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { assumed, statedOr } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';

type CurrentFact = Extract<
  FactNames['operation'],
  `operation.${'earth_clamp_on' | 'earth_clamp_distance' | 'control_units_state'}`
>;

/** Which way the welding current takes back: where the clamp sits, and what becomes of the control units beside it. */
export function currentPathFacts(operation: Operation, at: string): Readonly<Record<CurrentFact, Fact>> {
  const {
    earth_clamp_on: on,
    earth_clamp: clamp,
    control_units_state: state,
    control_units: units,
  } = operation;
  return {
    'operation.earth_clamp_on':
      on === undefined && saysThroughBearing(clamp)
        ? assumed('wheel, hub or suspension', 'Read from the words of `earth_clamp`.', `${at}/earth_clamp`)
        : statedOr(
            on,
            on === undefined ? `${at}/earth_clamp` : `${at}/earth_clamp_on`,
            'On what the earth clamp sits is not stated in fixed words.',
          ),
    'operation.earth_clamp_distance': statedOr(
      quantityOf(operation.earth_clamp_distance, 'length'),
      `${at}/earth_clamp_distance`,
      'How far the earth clamp sits from the weld is not stated.',
    ),
    'operation.control_units_state':
      state === undefined && saysLeftPluggedIn(units)
        ? assumed('left plugged in', 'Read from the words of `control_units`.', `${at}/control_units`)
        : statedOr(
            state,
            state === undefined ? `${at}/control_units` : `${at}/control_units_state`,
            'What becomes of control units is not stated in fixed words.',
          ),
  };
}

// Most texts hold none of these words, and to compile the patterns takes milliseconds.
const bearing = /hub|wheel|disc|spring|wishbone|control arm|axle|bearing|shaft|steering|suspension/i;
const leaving = /stay|left|remain|kept|not |^plugged|^connected/i;

function saysThroughBearing(text = ''): boolean {
  return bearing.test(text) && throughBearing.test(text);
}

function saysLeftPluggedIn(text = ''): boolean {
  return leaving.test(text) && leftPluggedIn.test(text);
}

/** Words that begin so leave no doubt; whoever means something else has the fixed words to say it with. */
const throughBearing =
  /^(?:to|on|at)?\s*(?:the\s+|a\s+)?(?:\S+\s+){0,3}?(?:hubs?|wheels?|brake discs?|springs?|wishbones?|control arms?|axles?|bearings?|drive ?shafts?|steering|suspension)\b(?! ?(?:arch|house|housing|well|tub))/i;
const leftPluggedIn =
  /^(?:(?:all|both|they|the|control|units?|modules?)\s+)*(?:stay|stays|are left|left|remain|remains|kept)\s+(?:all\s+)?(?:in|on|plugged|connected|fitted|where|as)\b(?!.*\b(?:unplugged|disconnected|removed)\b)|^(?:not (?:unplugged|disconnected|removed|touched)|plugged in|connected)\b/i;
