import { assumedHeatInput, heatInput, powerHeatInput } from '../../heat/weld/arc.ts';
import type { ArcProcess } from '../../heat/weld/arc.ts';
import type { Joint, JointMethod } from '../../generated/plan-types.ts';
import { isArc, isResistance } from '../joint/joint-methods.ts';
import { goesOnWithoutWelding } from '../part/part-kinds.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey, OperationSurvey } from '../survey.ts';

export type HeatSource =
  | { readonly kind: 'heat' }
  | {
      readonly kind: 'arc' | 'brazing';
      /** Net heat input of the hottest for each mm of seam and each mm of sheet, J/mm². */
      readonly joulePerMm2: number;
      /** Every seam of the kind, with how it is laid. */
      readonly beads: readonly SeamBead[];
      readonly assumption?: string;
      /** Ids of the parts that the seam joins; joint rules judge them, not this heat. */
      readonly joins: ReadonlySet<string>;
    }
  | { readonly kind: 'resistance spot' | 'cutting or grinding' };

/** One seam: its heat input, and what is stated of passes and stitches. */
export interface SeamBead {
  readonly joulePerMm2: number;
  /** The thinnest sheet of the joint, mm, in which all of its heat is taken to run; absent where it is not known. */
  readonly thinnestMm?: number;
  /** What is missing of its numbers, in a sentence; the heat input is then the worst. */
  readonly silent?: string;
  readonly passes: number;
  readonly interpassCelsius?: number;
  /** Only where length and number of the stitches are stated. */
  readonly stitch?: { readonly stitches: number; readonly stitchMm: number; readonly pauseSeconds?: number };
}

/** The sources of heat in one operation. Of several like joints the hottest counts. */
export function heatSources(survey: OperationSurvey): readonly HeatSource[] {
  const sources: HeatSource[] = [];
  if (survey.heatOf !== undefined) return sources;
  if (survey.heats === true) sources.push({ kind: 'heat' });
  const arcs = survey.joints.filter(({ joint }) => joint.method !== undefined && isArc(joint.method));
  for (const kind of ['arc', 'brazing'] as const) {
    const ofKind = arcs.filter(({ joint }) => (joint.method === 'arc braze') === (kind === 'brazing'));
    if (ofKind.length > 0) sources.push({ kind, ...hottest(survey, ofKind) });
  }
  const resistance = survey.joints.some(
    ({ joint }) => joint.method !== undefined && isResistance(joint.method),
  );
  if (resistance) sources.push({ kind: 'resistance spot' });
  const { do: word } = survey.operation;
  const isUnsaid = survey.joints.every(({ joint }) => joint.method === undefined);
  const weldsUnsaid = survey.hot === true && sources.length === 0 && isUnsaid && !isCuttingAlone(word);
  if (weldsUnsaid) {
    sources.push({
      kind: word === 'braze' ? 'brazing' : 'arc',
      joulePerMm2: worstJoulePerMm2(),
      beads: [{ joulePerMm2: worstJoulePerMm2(), silent: 'No joint is stated.', passes: 1 }],
      assumption: 'No joint is stated; an arc seam of the highest heat input is taken.',
      joins: joinedIds(survey, []),
    });
  }
  const isPlasma = survey.operation.cut_with === 'plasma' && survey.hot !== false;
  if (isPlasma && sources.every(({ kind }) => kind !== 'arc' && kind !== 'brazing')) {
    sources.push({
      kind: 'arc',
      joulePerMm2: worstJoulePerMm2(),
      beads: [
        { joulePerMm2: worstJoulePerMm2(), silent: 'The heat of a plasma cut is not computed.', passes: 1 },
      ],
      assumption: 'The plasma cut is taken as an arc seam of the highest heat input.',
      joins: joinedIds(survey, []),
    });
  }
  // What heat or an arc reaches, sparks need not be asked about again.
  if (cuts(survey) && sources.every(({ kind }) => kind === 'resistance spot')) {
    sources.push({ kind: 'cutting or grinding' });
  }
  return sources;
}

type Word = OperationSurvey['operation']['do'];

function isCuttingAlone(word: Word): boolean {
  return word === 'grind' || word === 'drill' || word === 'cut for access';
}

/** Cut, ground or drilled on the vehicle: what is welded on anew was cut out first. */
function cuts({ operation, part, hot, offVehicle }: OperationSurvey): boolean {
  if (offVehicle || hot === false) return false;
  const { do: word } = operation;
  return (
    isCuttingAlone(word) ||
    word === 'section' ||
    word === 'butt weld' ||
    (word === 'replace' && !goesOnWithoutWelding(part.part.kind))
  );
}

function hottest(
  survey: OperationSurvey,
  joints: readonly JointSurvey[],
): Pick<Seam, 'joulePerMm2' | 'beads' | 'assumption' | 'joins'> {
  const beads = joints.map(beadOf);
  const silent = beads.find((bead) => bead.silent !== undefined)?.silent;
  return {
    joulePerMm2: Math.max(...beads.map(({ joulePerMm2 }) => joulePerMm2)),
    beads,
    joins: joinedIds(survey, joints),
    ...(silent === undefined
      ? {}
      : {
          assumption: `${silent} ${String(worstJoulePerMm2())} J/mm for each mm of sheet is taken, the worst.`,
        }),
  };
}

type Seam = Extract<HeatSource, { readonly kind: 'arc' | 'brazing' }>;

function beadOf({ joint, thinnestMm }: JointSurvey): SeamBead {
  const { settings, count } = joint;
  const input = heatPerThickness(joint, thinnestMm);
  const interpassCelsius = quantityOf(settings?.interpass, 'temperature');
  const stitchMm = quantityOf(settings?.stitch, 'length');
  const pauseSeconds = quantityOf(settings?.pause, 'time');
  return {
    passes: settings?.passes ?? 1,
    ...('silent' in input ? { joulePerMm2: worstJoulePerMm2(), silent: input.silent } : input),
    ...(thinnestMm === undefined ? {} : { thinnestMm }),
    ...(interpassCelsius === undefined ? {} : { interpassCelsius }),
    ...(stitchMm === undefined || count === undefined
      ? {}
      : {
          stitch: { stitches: count, stitchMm, ...(pauseSeconds === undefined ? {} : { pauseSeconds }) },
        }),
  };
}

/** The assumption of `heat/` for one millimetre of sheet. */
function worstJoulePerMm2(): number {
  const worst = assumedHeatInput(1);
  return worst.ok ? worst.joulePerMm : Number.NaN;
}

type Input = { readonly joulePerMm2: number } | { readonly silent: string };

/** The heat input of stated numbers, or what is missing of them. */
export function heatPerThickness(joint: Joint, thicknessMm: number | undefined): Input {
  if (thicknessMm === undefined || thicknessMm <= 0) {
    return {
      silent: 'The thickness of the thinnest sheet of a seam, or what it is joined to, is not stated.',
    };
  }
  const net = quantityOf(joint.settings?.heat_input, 'energy per length');
  if (net !== undefined) return { joulePerMm2: (net * 1000) / thicknessMm };
  const watts = quantityOf(joint.settings?.power, 'power');
  const volts = quantityOf(joint.settings?.voltage, 'voltage');
  const kiloamperes = quantityOf(joint.settings?.current, 'current');
  const speedMmPerSecond = quantityOf(joint.settings?.travel_speed, 'speed');
  const process = processOf(joint.method);
  const needs = process === 'laser' ? '`power`' : '`voltage`, `current`';
  const silent = { silent: `The heat input of a seam is not stated (${needs} and \`travel_speed\`).` };
  if (speedMmPerSecond === undefined) return silent;
  const input =
    watts !== undefined
      ? powerHeatInput({ watts, speedMmPerSecond, process })
      : volts === undefined || kiloamperes === undefined
        ? undefined
        : heatInput({ volts, amperes: kiloamperes * 1000, speedMmPerSecond, process });
  return input?.ok === true ? { joulePerMm2: input.joulePerMm / thicknessMm } : silent;
}

function processOf(method: JointMethod | undefined): ArcProcess | 'laser' {
  if (method === 'TIG seam') return 'TIG';
  if (method === 'laser seam') return 'laser';
  return method === 'arc braze' ? 'MIG brazing' : 'MIG or MAG';
}

function joinedIds(survey: OperationSurvey, joints: readonly JointSurvey[]): ReadonlySet<string> {
  const { id } = survey.part.part;
  return new Set([
    ...(id === undefined ? [] : [id]),
    ...joints.flatMap(({ joint }) => [
      ...(joint.sheets ?? []),
      ...(joint.to === undefined ? [] : [joint.to]),
    ]),
  ]);
}
