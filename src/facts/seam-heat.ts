import type { AdamsCase } from '../heat/adams.ts';
import { passesPeakCelsius, stitchesPeakCelsius } from '../heat/weld-passes.ts';
import type { PassesPeak } from '../heat/weld-passes.ts';
import type { WeldMetalName } from '../heat/weld-metal.ts';
import type { HeatSource, SeamBead } from './heat-sources.ts';
import { quantityOf } from './quantity-of.ts';
import type { OperationSurvey } from './survey.ts';

export type SeamSource = Extract<HeatSource, { readonly kind: 'arc' | 'brazing' }>;

export type SeamHeat =
  | {
      readonly ok: true;
      readonly peakCelsius: number;
      readonly assumed: boolean;
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly reason: string };

/** The peak beside the hottest of an operation's seams, at any distance from the edge of the fused metal. */
export function seamHeat(
  { operation, part }: OperationSurvey,
  { beads, assumption }: SeamSource,
  distanceMm: number,
): SeamHeat {
  const metal = weldMetalOf(part.material.class);
  if (metal === undefined)
    return { ok: false, reason: `Heat in ${part.material.class ?? 'this'} parts is not computed.` };
  const freeEndMm = quantityOf(operation.free_end, 'length');
  let hottest: { readonly peakCelsius: number; readonly assumptions: readonly string[] } | undefined;
  for (const bead of beads) {
    const peak = beadPeak(bead, {
      heatInputJPerMm: bead.joulePerMm2,
      // The formula knows only heat input by thickness; one millimetre stands for any sheet.
      thicknessMm: 1,
      distanceMm,
      metal,
      ...(freeEndMm === undefined ? {} : { freeEndMm }),
    });
    if (!peak.ok) return { ok: false, reason: sentence(peak.reason) };
    if (hottest === undefined || peak.peakCelsius > hottest.peakCelsius) hottest = peak;
  }
  if (hottest === undefined) return { ok: false, reason: 'No seam is stated.' };
  return {
    ok: true,
    peakCelsius: hottest.peakCelsius,
    assumed: assumption !== undefined || part.material.class === undefined,
    notes: [
      ...(assumption === undefined ? [] : [assumption]),
      ...(part.material.class === undefined ? ['The welded metal is not known: steel is taken.'] : []),
      ...hottest.assumptions,
      'Peak beside one pass in thin sheet (Adams), no loss to air.',
    ],
  };
}

/** Passes on each other heat more than stitches spare: of a seam of several, the stitches are left out. */
function beadPeak(
  { passes, interpassCelsius, stitch }: SeamBead,
  weld: Omit<AdamsCase, 'ambientCelsius'>,
): PassesPeak {
  if (passes === 1 && stitch !== undefined) {
    return stitchesPeakCelsius({ ...weld, ...stitch });
  }
  return passesPeakCelsius({
    ...weld,
    passes,
    ...(interpassCelsius === undefined ? {} : { interpassCelsius }),
  });
}

/** By which constants a seam in metal of this class is computed; of unknown metal steel. */
export function weldMetalOf(strengthClass: string | undefined): WeldMetalName | undefined {
  switch (strengthClass) {
    case 'aluminium':
    case 'stainless':
      return strengthClass;
    case 'magnesium':
    case 'composite':
      return undefined;
    default:
      return 'steel';
  }
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
}
