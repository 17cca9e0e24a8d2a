import { readPlanWord } from '../../facts/heat/read-heat-words.ts';
import type { Fault } from '../../facts/heat/read-heat-words.ts';
import type { Near } from '../../generated/plan-types.ts';
import { planWords } from '../../plan/plan-words.ts';
import { readOptionQuantity } from './option-numbers.ts';

/** What the command line says of a heat sink, as it was written. */
export interface SinkArguments {
  readonly sink?: string;
  readonly sinkDistance?: string;
  readonly sinkWidth?: string;
  readonly sinkLength?: string;
  readonly sinkWater?: string;
  readonly sinkThickness?: string;
  readonly sinkHeld?: string;
}

type Sink = NonNullable<Near['sink']>;
type SinkOption = 'sinkDistance' | 'sinkWidth' | 'sinkLength' | 'sinkWater' | 'sinkThickness' | 'sinkHeld';

const dashed: Readonly<Record<SinkOption, string>> = {
  sinkDistance: '--sink-distance',
  sinkWidth: '--sink-width',
  sinkLength: '--sink-length',
  sinkWater: '--sink-water',
  sinkThickness: '--sink-thickness',
  sinkHeld: '--sink-held',
};
const ofBoth = ['sinkDistance', 'sinkWidth'] as const;
const needed = {
  'wet cloth': [...ofBoth, 'sinkLength', 'sinkWater'],
  'copper bar': [...ofBoth, 'sinkThickness', 'sinkHeld'],
} as const;

/** The heat sink that is asked about, in the words of the plan; a number that is missing is a fault, since it was asked for. */
export function readSinkOptions(given: SinkArguments, readings: string[], fault: Fault): Sink | undefined {
  const stated = Object.keys(dashed)
    .filter(isSinkOption)
    .filter((option) => given[option] !== undefined);
  if (given.sink === undefined) {
    for (const option of stated) fault(`${dashed[option]} belongs to --sink.`);
    return undefined;
  }
  const kind = readPlanWord('--sink', given.sink, planWords('near', 'sink', 'kind'), readings, fault);
  if (kind !== 'wet cloth' && kind !== 'copper bar') return undefined;
  const asked: readonly SinkOption[] = needed[kind];
  for (const option of asked)
    if (given[option] === undefined)
      fault(`${dashed[option]} is missing: a ${kind} counts only with all its numbers.`);
  for (const option of stated)
    if (!asked.includes(option)) fault(`${dashed[option]} does not belong to a ${kind}.`);
  readOptionQuantity('sink-distance', given.sinkDistance, fault);
  readOptionQuantity('sink-width', given.sinkWidth, fault);
  readOptionQuantity('sink-length', given.sinkLength, fault);
  readOptionQuantity('sink-water', given.sinkWater, fault);
  readOptionQuantity('sink-thickness', given.sinkThickness, fault);
  const held = readPlanWord(
    '--sink-held',
    given.sinkHeld,
    planWords('near', 'sink', 'held'),
    readings,
    fault,
  );
  readings.push(`The ${kind} is taken to lie across the whole way of the heat and beyond it at both sides.`);
  return {
    kind,
    across: true,
    ...(given.sinkDistance === undefined ? {} : { distance: given.sinkDistance }),
    ...(given.sinkWidth === undefined ? {} : { width: given.sinkWidth }),
    ...(given.sinkLength === undefined ? {} : { length: given.sinkLength }),
    ...(given.sinkWater === undefined ? {} : { water: given.sinkWater }),
    ...(given.sinkThickness === undefined ? {} : { thickness: given.sinkThickness }),
    ...(held === 'clamped' || held === 'laid on' ? { held } : {}),
  };
}

function isSinkOption(name: string): name is SinkOption {
  return name in dashed;
}
