import { adamsWidthMm } from '../../heat/weld/adams.ts';
import { coolingTime } from '../../heat/weld/cooling-time.ts';
import { ac1Celsius } from '../../heat/strength/tempering.ts';
import type { Fact } from '../fact.ts';
import { heatSources } from '../heat/heat-sources.ts';
import type { HeatSource } from '../heat/heat-sources.ts';
import { assumed, computed, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import { weldMetalOf } from '../heat/seam-heat.ts';
import type { OperationSurvey } from '../survey.ts';

type WeldFact = 'operation.heat_input' | 'operation.t85' | 'operation.haz_width';
type Arc = Extract<HeatSource, { readonly kind: 'arc' | 'brazing' }>;

/** What the hottest arc of an operation does to the sheet beside it. */
export function weldFacts(one: OperationSurvey): Readonly<Record<WeldFact, Fact>> {
  const place = `${one.at}/joints`;
  const arc = heatSources(one)
    .filter((source): source is Arc => source.kind === 'arc' || source.kind === 'brazing')
    .toSorted((a, b) => b.joulePerMm2 - a.joulePerMm2)
    .at(0);
  const thicknessMm = quantityOf(one.part.part.thickness, 'length');
  if (arc === undefined) return none('Nothing is welded or brazed by an arc.', place);
  if (thicknessMm === undefined) return none('The sheet thickness is not stated.', place);
  const silent = arc.beads.find((bead) => bead.silent !== undefined)?.silent;
  if (silent !== undefined) return none(silent, place);
  const heatInputJPerMm = arc.joulePerMm2 * thicknessMm;
  const from = (value: number, note?: string): Fact =>
    arc.assumption === undefined
      ? computed(value, place, note)
      : assumed(value, [arc.assumption, note].filter((one) => one !== undefined).join(' '), place);
  const cooling = coolingTime({ heatInputJPerMm, thicknessMm });
  const freeEndMm = quantityOf(one.operation.free_end, 'length');
  const width = adamsWidthMm({
    heatInputJPerMm,
    thicknessMm,
    metal: weldMetalOf(one.part.material.class) ?? 'steel',
    celsius: ac1Celsius,
    ...(freeEndMm === undefined ? {} : { freeEndMm }),
  });
  return {
    'operation.heat_input': from(heatInputJPerMm / 1000),
    'operation.t85': cooling.ok ? from(cooling.mostSeconds, cooling.note) : unknown(cooling.reason, place),
    'operation.haz_width': width.ok ? from(width.widthMm) : unknown(width.reason, place),
  };
}

function none(reason: string, place: string): Readonly<Record<WeldFact, Fact>> {
  const fact = unknown(reason, place);
  return { 'operation.heat_input': fact, 'operation.t85': fact, 'operation.haz_width': fact };
}
