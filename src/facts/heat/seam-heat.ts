import type { AdamsCase } from '../../heat/weld/adams.ts';
import { passesPeakCelsius, stitchesPeakCelsius } from '../../heat/weld/weld-passes.ts';
import type { PassesPeak } from '../../heat/weld/weld-passes.ts';
import { weldMetals } from '../../heat/weld/weld-metal.ts';
import type { WeldMetalName } from '../../heat/weld/weld-metal.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import { endAtNeighbour, freeEndOf } from './free-end.ts';
import type { HeatSource, SeamBead } from './heat-sources.ts';
import { seamBeyond } from './seam-beyond.ts';
import type { SeamBeyond } from './seam-beyond.ts';
import type { OperationSurvey } from '../survey.ts';

export type SeamSource = Extract<HeatSource, { readonly kind: 'arc' | 'brazing' }>;

/** Something that the plan leaves open, taken at its worst, and what is certain without it. */
export interface Silence {
  /** What is not stated, in a sentence. */
  readonly reason: string;
  /** The peak by stated numbers alone, °C; absent where none can be told. */
  readonly sureCelsius?: number;
}

export type SeamHeat =
  | {
      readonly ok: true;
      readonly peakCelsius: number;
      readonly assumed: boolean;
      readonly notes: readonly string[];
      readonly silence?: Silence;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * The peak beside the seams of an operation, at any distance from the edge of the fused metal. What is not stated is taken at its
 * worst and told as `silence`: the heat input, how far the sheet cools between several seams, and how thick a sheet the heat
 * runs on into.
 *
 * @param neighbour the part that begins at that distance, or an item at it; absent where the sheet itself is asked about.
 */
export function seamHeat(
  one: OperationSurvey,
  source: SeamSource,
  distanceMm: number,
  neighbour?: Neighbour,
): SeamHeat {
  if (neighbour === undefined || isOfJoint(neighbour, source)) return heatBeside(one, source, distanceMm);
  const silent = new Set<string>();
  const worst = heatBeside(one, source, distanceMm, (bead, metal) => {
    const beyond = seamBeyond(neighbour, metal, bead.thinnestMm);
    if (beyond?.silent !== undefined) silent.add(beyond.silent);
    return beyond;
  });
  const [reason] = silent;
  if (!worst.ok || reason === undefined) return worst;
  const without = heatBeside(one, source, distanceMm);
  if (!without.ok) return without;
  // An end at the neighbour may have been taken already, and then nothing is open.
  if (without.peakCelsius >= worst.peakCelsius) return worst;
  const sureCelsius = without.silence === undefined ? without.peakCelsius : without.silence.sureCelsius;
  return {
    ...worst,
    assumed: true,
    silence: {
      reason: worst.silence?.reason ?? reason,
      ...(sureCelsius === undefined ? {} : { sureCelsius }),
    },
  };
}

/** The joint's own sheets are in its figures. */
function isOfJoint({ part, carrier }: Neighbour, { joins }: SeamSource): boolean {
  const id = (part ?? carrier)?.part.id;
  return id !== undefined && joins.has(id);
}

type BeyondOf = (bead: SeamBead, metal: WeldMetalName) => SeamBeyond | undefined;

function heatBeside(
  { operation, part }: OperationSurvey,
  { beads, assumption }: SeamSource,
  distanceMm: number,
  beyondOf: BeyondOf = () => undefined,
): SeamHeat {
  const metals = seamMetals(part.material.class);
  if (metals.length === 0)
    return { ok: false, reason: `Heat in ${part.material.class ?? 'this'} parts is not computed.` };
  const end = freeEndOf(operation);
  const freeEndMm = end === 'runs on' ? undefined : (end ?? distanceMm);
  const several = beads.length > 1;
  const peaks: BeadPeak[] = [];
  const told = new Set<string>();
  for (const bead of beads) {
    let worst: Extract<PassesPeak, { readonly ok: true }> | undefined;
    for (const metal of metals) {
      const beyond = beyondOf(bead, metal);
      // With the end at the neighbour there is nothing beyond it.
      if (beyond !== undefined && end !== undefined) told.add(beyond.note);
      const peak = beadPeak(bead, several, {
        heatInputJPerMm: bead.joulePerMm2,
        // The formula knows only heat input by thickness; one millimetre stands for any sheet.
        thicknessMm: 1,
        distanceMm,
        metal,
        ...(freeEndMm === undefined ? {} : { freeEndMm }),
        ...(beyond === undefined ? {} : { thrownBack: beyond.thrownBack }),
      });
      if (!peak.ok) return { ok: false, reason: sentence(peak.reason) };
      if (worst === undefined || peak.peakCelsius > worst.peakCelsius) worst = peak;
    }
    if (worst === undefined) continue;
    peaks.push({ peakCelsius: worst.peakCelsius, bead });
    worst.assumptions.forEach((note) => told.add(note));
  }
  if (peaks.length === 0) return { ok: false, reason: 'No seam is stated.' };
  const together = peakTogether(peaks, metals);
  const silence = silenceOf(peaks, together);
  return {
    ok: true,
    peakCelsius: together,
    assumed:
      silence !== undefined ||
      assumption !== undefined ||
      end === undefined ||
      part.material.class === undefined,
    notes: [
      ...(assumption === undefined ? [] : [assumption]),
      ...(part.material.class === undefined
        ? ['The welded metal is not known: the one that leads the heat furthest is taken.']
        : []),
      ...(end === undefined ? [endAtNeighbour] : []),
      ...(several && beads.some(isWithoutPause) ? [noPause] : []),
      ...told,
      'Peak beside one pass in thin sheet (Adams), no loss to air.',
    ],
    ...(silence === undefined ? {} : { silence }),
  };
}

const noPause =
  'How far the sheet cools between the seams (`interpass`) is not stated: they are taken to follow each other without a pause.';

function isWithoutPause({ interpassCelsius }: SeamBead): boolean {
  return interpassCelsius === undefined;
}

type BeadPeak = { readonly peakCelsius: number; readonly bead: SeamBead };

/** Conducted heat adds up; seams that begin on cooled sheet stand alone. Never above melting. */
function peakTogether(peaks: readonly BeadPeak[], metals: readonly WeldMetalName[]): number {
  const alone = peaks.filter(({ bead }) => !isWithoutPause(bead)).map(({ peakCelsius }) => peakCelsius);
  const joined = peaks
    .filter(({ bead }) => isWithoutPause(bead))
    .reduce((sum, { peakCelsius }) => sum + peakCelsius - ambientCelsius, ambientCelsius);
  const melt = Math.max(...metals.map((metal) => weldMetals[metal].meltCelsius));
  return Math.min(melt, Math.max(joined, ...alone));
}

const ambientCelsius = 20;

function silenceOf(peaks: readonly BeadPeak[], together: number): Silence | undefined {
  const stated = peaks.filter(({ bead }) => bead.silent === undefined);
  const sure = Math.max(...stated.map(({ peakCelsius }) => peakCelsius));
  const reason =
    peaks.find(({ bead }) => bead.silent !== undefined)?.bead.silent ??
    (sure < together ? noPause : undefined);
  if (reason === undefined) return undefined;
  return { reason, ...(stated.length === 0 ? {} : { sureCelsius: sure }) };
}

/** Passes on each other heat more than stitches spare: of a seam of several, the stitches are left out. */
function beadPeak(
  { passes, interpassCelsius, stitch }: SeamBead,
  several: boolean,
  weld: Omit<AdamsCase, 'ambientCelsius'>,
): PassesPeak {
  if (!several && passes === 1 && stitch !== undefined) {
    return stitchesPeakCelsius({ ...weld, ...stitch });
  }
  return passesPeakCelsius({
    ...weld,
    // A seam of several finds the sheet as warm as the one before may have left it.
    passes: several && interpassCelsius !== undefined ? Math.max(2, passes) : passes,
    ...(interpassCelsius === undefined ? {} : { interpassCelsius }),
  });
}

/** Of unknown metal each that it can be; none where nothing is computed. */
function seamMetals(strengthClass: string | undefined): readonly WeldMetalName[] {
  if (strengthClass === undefined) return ['steel', 'stainless', 'aluminium'];
  const metal = weldMetalOf(strengthClass);
  return metal === undefined ? [] : [metal];
}

/** By which constants a seam in metal of this class is computed; of unknown metal steel. */
export function weldMetalOf(strengthClass: string | undefined): WeldMetalName | undefined {
  switch (strengthClass) {
    case 'aluminium':
    case 'stainless':
      return strengthClass;
    case 'magnesium':
    case 'composite':
    case 'plastic':
      return undefined;
    default:
      return 'steel';
  }
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
}
