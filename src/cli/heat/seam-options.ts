import { readMetal, readNear, readPlanWord } from '../../facts/heat/read-heat-words.ts';
import type { Fault } from '../../facts/heat/read-heat-words.ts';
import type { SeamQuestion } from '../../facts/heat/seam-question.ts';
import type { Joint, JointMethod } from '../../generated/plan-types.ts';
import { runsOn } from '../../quantity/read-free-end.ts';
import { planWords } from '../../plan/plan-words.ts';
import type { HeatArguments } from './heat-options.ts';
import { passThicknessMm } from '../../heat/weld/adams.ts';
import { readOptionNumber, readOptionQuantity } from './option-numbers.ts';
import type { QuantityOption } from './option-numbers.ts';

/** What the command line says of a seam without a plan, as it was written. */
export interface SeamArguments extends HeatArguments {
  readonly method?: string;
  readonly heatInput?: string;
  readonly voltage?: string;
  readonly current?: string;
  readonly power?: string;
  readonly travelSpeed?: string;
  readonly passes?: string;
  readonly interpass?: string;
  readonly stitch?: string;
  readonly count?: string;
  readonly pause?: string;
}

export type SeamReading =
  | { readonly ok: true; readonly question: SeamQuestion; readonly readings: readonly string[] }
  /** One sentence for each fault. */
  | { readonly ok: false; readonly sentences: readonly string[] };

const mostDistances = 12;
const ofSeamAlone = [
  ...(['heatInput', 'voltage', 'current', 'power', 'travelSpeed'] as const),
  ...(['passes', 'interpass', 'stitch', 'count', 'pause'] as const),
];
const ofHeldHeatAlone = [
  ...(['source', 'temperature', 'hold', 'times', 'measuredBy', 'shape', 'radius'] as const),
  ...(['convection', 'emissivity', 'ambient', 'sink', 'sinkDistance', 'sinkWidth', 'sinkLength'] as const),
  ...(['sinkWater', 'sinkThickness', 'sinkHeld'] as const),
];

/** Options of a seam that stand beside none; each as one sentence. */
export function strayOptions(given: SeamArguments): readonly string[] {
  const stray = given.method === undefined ? ofSeamAlone : ofHeldHeatAlone;
  return stray
    .filter((option) => given[option] !== undefined)
    .map((option) =>
      given.method === undefined
        ? `${dashed(option)} belongs to a seam: name it with --method.`
        : `${dashed(option)} belongs to a held heat, not to a seam.`,
    );
}

/** Reads the options of a seam in the words and units of the plan; every fault comes out, each as one sentence. */
export function readSeamOptions(given: SeamArguments): SeamReading {
  const faults: string[] = [...strayOptions(given)];
  const readings: string[] = [];
  const fault: Fault = (sentence) => {
    faults.push(sentence);
  };
  const quantity = (option: QuantityOption, text: string | undefined): number | undefined =>
    readOptionQuantity(option, text, fault);
  const method = readPlanWord('--method', given.method, planWords('joint_method'), readings, fault);
  if (given.sheet === undefined)
    fault(
      `--sheet is missing: the thickness, ${String(passThicknessMm.least)} to ${String(passThicknessMm.most)} mm, such as 1.2mm.`,
    );
  if (given.near === undefined)
    fault('--near is missing: what lies beside it, such as press-hardened or "structural adhesive".');
  const near = readNear(given.near, readings, fault);
  const metal = readMetal(given.metal, readings, fault);
  quantity('sheet', given.sheet);
  if (!runsOn(given.edge)) quantity('edge', given.edge);
  const joint = {
    ...(isMethod(method) ? { method } : {}),
    ...countOf(given, fault),
    settings: settingsOf(given, quantity, fault),
  };
  const distancesMm = given.at?.split(',').map((one) => quantity('at', one));
  if (distancesMm !== undefined && distancesMm.length > mostDistances)
    fault(`--at takes up to ${String(mostDistances)} distances; these are ${String(distancesMm.length)}.`);
  if (faults.length > 0 || near === undefined || given.sheet === undefined)
    return { ok: false, sentences: faults };
  return {
    ok: true,
    readings,
    question: {
      joint,
      thickness: given.sheet,
      near,
      ...(metal === undefined ? {} : { metal }),
      ...(given.edge === undefined ? {} : { freeEnd: given.edge }),
      ...(distancesMm === undefined ? {} : { distancesMm: distancesMm.filter((one) => one !== undefined) }),
    },
  };
}

function settingsOf(
  given: SeamArguments,
  quantity: (option: QuantityOption, text: string | undefined) => number | undefined,
  fault: Fault,
): NonNullable<Joint['settings']> {
  quantity('heat-input', given.heatInput);
  quantity('voltage', given.voltage);
  quantity('current', given.current);
  quantity('power', given.power);
  quantity('travel-speed', given.travelSpeed);
  quantity('interpass', given.interpass);
  quantity('stitch', given.stitch);
  quantity('pause', given.pause);
  const passes = wholeNumber('passes', given.passes, 20, fault);
  return {
    ...(given.heatInput === undefined ? {} : { heat_input: given.heatInput }),
    ...(given.voltage === undefined ? {} : { voltage: given.voltage }),
    ...(given.current === undefined ? {} : { current: given.current }),
    ...(given.power === undefined ? {} : { power: given.power }),
    ...(given.travelSpeed === undefined ? {} : { travel_speed: given.travelSpeed }),
    ...(given.interpass === undefined ? {} : { interpass: given.interpass }),
    ...(given.stitch === undefined ? {} : { stitch: given.stitch }),
    ...(given.pause === undefined ? {} : { pause: given.pause }),
    ...(passes === undefined ? {} : { passes }),
  };
}

function countOf({ count }: SeamArguments, fault: Fault): { readonly count?: number } {
  const stitches = wholeNumber('count', count, 500, fault);
  return stitches === undefined ? {} : { count: stitches };
}

function wholeNumber(
  option: string,
  text: string | undefined,
  most: number,
  fault: Fault,
): number | undefined {
  const value = readOptionNumber(option, text, [1, most], fault);
  if (value === undefined || Number.isInteger(value)) return value;
  fault(`--${option} ${String(value)} is no count: a whole number from 1 to ${String(most)}.`);
  return undefined;
}

function dashed(option: string): string {
  return `--${option.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}`;
}

// The schema holds the words and the compiler cannot see that; this tells it.
function isMethod(text: string | undefined): text is JointMethod {
  return text !== undefined;
}
