import type { HeldLap } from '../../heat/sheet/held-lap.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import type { NeighbourStrip } from './neighbour-strip.ts';
import { metalOf } from './neighbour-strip.ts';
import { quantityOf } from '../quantity-of.ts';
import { thinnerBeyond } from './thinner-beyond.ts';

type Strip = Extract<NeighbourStrip, { readonly ok: true }>;

/** How a neighbour that lies on the heated sheet is computed: as a lap, as a strip with the reason, or as a strip without one. */
export type LapReading =
  | { readonly kind: 'lap'; readonly lap: HeldLap; readonly notes: readonly string[] }
  | { readonly kind: 'strip'; readonly notes: readonly string[] };

/**
 * The lap that the plan states for a joined part. Where a number of it is missing the heated sheet is computed alone, ending
 * with the lap: the second sheet could only take heat away from the place where it begins.
 *
 * A flange turns back at its near end where this model lets the second sheet go on at the far end. The nearer a body
 * draws heat, the cooler is the place where it begins, so that the model errs high; an argument, not a proof.
 *
 * @param distanceMm from the edge of the heated zone to the neighbour's nearest edge.
 */
export function readLap(
  neighbour: Neighbour,
  held: Strip,
  distanceMm: number,
  freeEndStated: boolean,
): LapReading {
  const { strip, sink } = held;
  const { near, part, path, name } = neighbour;
  const stated = near?.lap;
  if (stated === undefined) {
    const beyond = thinnerBeyond(neighbour, held, distanceMm);
    return beyond === undefined ? { kind: 'strip', notes: [] } : { kind: 'lap', ...beyond };
  }
  const leftOut = (why: string): LapReading => ({
    kind: 'strip',
    notes: [`The lap is not counted: ${why}.`],
  });
  if (path !== 'joined') return leftOut('it is for a neighbour with the path `joined`');
  if (part === undefined) return leftOut('it is for a listed part, not for an item');
  if (sink !== undefined) return leftOut(`a lap and a heat sink (${sink.words}) together are not computed`);
  const lengthMm = quantityOf(stated.length, 'length');
  if (lengthMm === undefined) return leftOut('its `length` is not stated');
  const thicknessMm = quantityOf(part.part.thickness, 'length');
  if (thicknessMm === undefined) return leftOut(`the sheet thickness of ${name} is not stated`);
  const { class: strengthClass, provenance } = part.material;
  const metal = strengthClass === undefined || provenance === 'computed' ? undefined : metalOf(strengthClass);
  if (metal === undefined) return leftOut(`what ${name} is made of is not known`);
  const lapEndMm = distanceMm + lengthMm;
  const heatedEndMm = freeEndStated ? strip.freeEndMm : lapEndMm;
  if (heatedEndMm !== undefined && heatedEndMm < lapEndMm)
    return leftOut('it reaches beyond the `free_end` of the heated sheet');
  const beyondMm = quantityOf(stated.beyond, 'length');
  // Where the heated sheet runs on below it, the neighbour has left it at the end of the lap.
  const goesOn = heatedEndMm === lapEndMm ? (beyondMm ?? 0) : 0;
  const { thicknessMm: heatedMm, metal: heatedMetal, sourceCelsius, holdSeconds, times, cooledFaces } = strip;
  const diameterMm = quantityOf(stated.spot_diameter, 'length');
  const pitchMm = quantityOf(stated.spot_pitch, 'length');
  const isSpotted = diameterMm !== undefined && pitchMm !== undefined;
  return {
    kind: 'lap',
    lap: {
      ...{ sourceCelsius, holdSeconds, times },
      ...(cooledFaces === undefined ? {} : { cooledFaces }),
      heated: {
        metal: heatedMetal,
        thicknessMm: heatedMm,
        ...(heatedEndMm === undefined ? {} : { freeEndMm: heatedEndMm }),
      },
      other: { metal, thicknessMm, fromMm: distanceMm, freeEndMm: lapEndMm + goesOn },
      ...(isSpotted ? { contact: { kind: 'spots', diameterMm, pitchMm } } : {}),
    },
    notes: [
      isSpotted
        ? 'Through the spots of the lap as stated, pressed clean between them.'
        : 'Full contact in the lap.',
      ...(beyondMm === undefined ? [`${name} is taken to end with the lap.`] : []),
    ],
  };
}
