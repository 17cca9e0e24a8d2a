import type { HeatQuestion } from '../../facts/heat/heat-question.ts';
import { timesIfUnstated } from '../../facts/heat/heats-of-place.ts';
import { readMetal, readNear, readPlanWord } from '../../facts/heat/read-heat-words.ts';
import type { Fault } from '../../facts/heat/read-heat-words.ts';
import type { MeasuredBy, Operation } from '../../generated/plan-types.ts';
import { runsOn } from '../../quantity/read-free-end.ts';
import { sheetRanges } from '../../heat/sheet/sheet-range.ts';
import { planWords } from '../../plan/plan-words.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { askedRanges, readOptionNumber, readOptionQuantity } from './option-numbers.ts';
import type { QuantityOption } from './option-numbers.ts';
import { readSinkOptions } from './sink-options.ts';
import type { SinkArguments } from './sink-options.ts';

/** What the command line says of a heat without a plan, as it was written. */
export interface HeatArguments extends SinkArguments {
  readonly source?: string;
  readonly temperature?: string;
  readonly hold?: string;
  readonly sheet?: string;
  readonly times?: string;
  readonly measuredBy?: string;
  readonly near?: string;
  readonly metal?: string;
  readonly at?: string;
  readonly shape?: string;
  readonly radius?: string;
  readonly edge?: string;
  readonly cooledFaces?: string;
  readonly convection?: string;
  readonly emissivity?: string;
  readonly ambient?: string;
}

export type HeatReading =
  | { readonly ok: true; readonly question: HeatQuestion; readonly readings: readonly string[] }
  /** One sentence for each fault. */
  | { readonly ok: false; readonly sentences: readonly string[] };

const mostHeatings = sheetRanges.times.most;
const longestHeating = sheetRanges.heatingSeconds.most;
const mostDistances = 12;
/** The only unit that the number may carry; it needs none. */
const perSquareMetreKelvin = /\s*W\/\(?m(?:²|2|\^2)\s*[·*]?\s*K\)?\s*$/u;

/** Reads the options in the words and units of the plan; every fault comes out, each as one sentence. */
export function readHeatOptions(given: HeatArguments): HeatReading {
  const faults: string[] = [];
  const readings: string[] = [];
  const fault = (sentence: string): void => {
    faults.push(sentence);
  };
  const quantity = (option: QuantityOption, text: string | undefined): number | undefined =>
    readOptionQuantity(option, text, fault);

  missing(given).forEach(fault);
  const source = readPlanWord('--source', given.source, planWords('operation', 'source'), readings, fault);
  const means = readPlanWord(
    '--measured-by',
    given.measuredBy,
    planWords('measured_by', 'means'),
    readings,
    fault,
  );
  const faces = readPlanWord(
    '--cooled-faces',
    given.cooledFaces,
    planWords('operation', 'cooled_faces'),
    readings,
    fault,
  );
  const near = readNear(given.near, readings, fault);
  const metal = readMetal(given.metal, readings, fault);
  quantity('temperature', given.temperature);
  const holdSeconds = quantity('hold', given.hold);
  quantity('sheet', given.sheet);
  if (!runsOn(given.edge)) quantity('edge', given.edge);
  const times = readOptionNumber('times', given.times, [1, mostHeatings], fault);
  if (times !== undefined && !Number.isInteger(times))
    fault(`--times ${String(times)} is no count: a whole number from 1 to ${String(mostHeatings)}.`);
  const all = (holdSeconds ?? 0) * (times ?? timesIfUnstated);
  if (holdSeconds !== undefined && all > longestHeating) {
    const often =
      times === undefined ? 'twice, which is taken where --times is not given,' : `${String(times)} times`;
    fault(
      `--hold ${given.hold?.trim() ?? ''} ${often} is ${formatQuantity(all, 's')} of heating: up to ${formatQuantity(longestHeating, 's')} in all is plausible.`,
    );
  }
  const distancesMm = given.at?.split(',').map((one) => quantity('at', one));
  if (distancesMm !== undefined && distancesMm.length > mostDistances)
    fault(`--at takes up to ${String(mostDistances)} distances; these are ${String(distancesMm.length)}.`);
  const shape = shapeOf(given, fault);
  const radiusMm = quantity('radius', given.radius);
  const convection = readOptionNumber(
    'convection',
    given.convection?.replace(perSquareMetreKelvin, ''),
    [sheetRanges.convection.least, sheetRanges.convection.most],
    fault,
  );
  const emissivity = readOptionNumber(
    'emissivity',
    given.emissivity,
    [sheetRanges.emissivity.least, sheetRanges.emissivity.most],
    fault,
  );
  const ambientCelsius = quantity('ambient', given.ambient);

  const sink = readSinkOptions(given, readings, fault);

  if (faults.length > 0 || near === undefined || given.sheet === undefined)
    return { ok: false, sentences: faults };
  const operation: Operation = {
    ...(isSource(source) ? { source } : {}),
    ...(given.temperature === undefined ? {} : { temperature: given.temperature }),
    ...(given.hold === undefined ? {} : { hold: given.hold }),
    ...(times === undefined ? {} : { times }),
    ...(isMeans(means) ? { measured_by: { means } } : {}),
    ...(given.edge === undefined ? {} : { free_end: given.edge }),
    ...(faces === 'one' || faces === 'both' ? { cooled_faces: faces } : {}),
  };
  return {
    ok: true,
    readings,
    question: {
      operation,
      thickness: given.sheet,
      near,
      ...(metal === undefined ? {} : { metal }),
      ...(sink === undefined ? {} : { sink }),
      ...(distancesMm === undefined ? {} : { distancesMm: distancesMm.filter((one) => one !== undefined) }),
      ...(shape === undefined ? {} : { shape }),
      ...(radiusMm === undefined ? {} : { radiusMm }),
      ...(convection === undefined ? {} : { convection }),
      ...(emissivity === undefined ? {} : { emissivity }),
      ...(ambientCelsius === undefined ? {} : { ambientCelsius }),
    },
  };
}

function missing({ source, temperature, hold, sheet, near, measuredBy }: HeatArguments): readonly string[] {
  const unmeasuredTorch =
    source?.trim() === 'torch' && (measuredBy === undefined || measuredBy.trim() === 'none');
  const asked: readonly (readonly [string, string | undefined, string])[] = [
    ['--source', source, 'what heats, such as torch or induction'],
    // What a torch reaches that nobody measures is assumed, as in a plan.
    [
      '--temperature',
      unmeasuredTorch ? 'assumed' : temperature,
      `the highest temperature, ${askedRanges.temperature}, such as 600C`,
    ],
    ['--hold', hold, `the time of one heating, ${askedRanges.hold}, such as 30s`],
    ['--sheet', sheet, `the thickness, ${askedRanges.sheet}, such as 1.2mm`],
    ['--near', near, 'what lies beside it, such as press-hardened or "structural adhesive"'],
  ];
  return asked.flatMap(([option, value, what]) =>
    value === undefined ? [`${option} is missing: ${what}.`] : [],
  );
}

function shapeOf({ shape, radius }: HeatArguments, fault: Fault): 'strip' | 'disc' | undefined {
  const plain = shape?.trim().toLowerCase();
  if (plain !== undefined && plain !== 'strip' && plain !== 'disc') {
    fault(`--shape does not know \`${plain}\`: it takes strip or disc.`);
    return undefined;
  }
  if (plain === 'disc' && radius === undefined) {
    fault(`--shape disc needs --radius, the radius of the heated spot: ${askedRanges.radius} is plausible.`);
    return undefined;
  }
  if (plain !== 'disc' && radius !== undefined) {
    fault('--radius belongs to --shape disc.');
    return undefined;
  }
  return plain;
}

// The schema holds the words and the compiler cannot see that; these tell it.

function isSource(text: string | undefined): text is NonNullable<Operation['source']> {
  return text !== undefined;
}

function isMeans(text: string | undefined): text is NonNullable<MeasuredBy['means']> {
  return text !== undefined;
}
