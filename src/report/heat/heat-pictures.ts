import type { HeatAnswer } from '../../facts/heat/heat-question.ts';
import type { HeatedNeighbour, PlannedHeat } from '../../facts/heat/plan-heat.ts';
import type { SeamAnswer } from '../../facts/heat/seam-question.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import type { HeldHeat } from '../../heat/sheet/stay-clear.ts';
import type { HeatPicture, PictureLimit, PictureSink } from './heat-picture.ts';
import { heatWords } from './heat-words.ts';

/** The picture of a heat without a plan; distances that were asked about are its marks. */
export function answerPicture({
  heat,
  curve,
  limit,
  victim,
  clear,
  exposures,
  question,
}: HeatAnswer): HeatPicture {
  return {
    title: `Heat along the sheet: ${heatWords(heat, question.operation.source)}`,
    curves: [{ label: thickness(heat.thicknessMm), curve }],
    limits: limitLines(limit, victim),
    marks: question.distancesMm === undefined ? [] : exposures.map(markOf),
    sinks: sinksOf([heat]),
    times: exposures.flatMap(({ distanceMm, history }) =>
      history === undefined ? [] : [{ label: `at ${formatQuantity(distanceMm, 'mm')}`, history }],
    ),
    ...(clear.ok && clear.distanceMm > 0 ? { clearMm: clear.distanceMm } : {}),
  };
}

/** The limits of the thing that is looked at, as lines; one where nothing lies between asking and stopping. */
function limitLines(
  { holdAboveCelsius: hold, stopAboveCelsius: stop }: HeatAnswer['limit'],
  victim: string,
): HeatPicture['limits'] {
  return [
    ...(hold === undefined ? [] : [{ celsius: hold, label: `limit of ${victim}` }]),
    ...(stop === undefined || stop === hold ? [] : [{ celsius: stop, label: `stop for ${victim}` }]),
  ];
}

/** A distance that was asked about, as a mark. */
function markOf({
  distanceMm,
  peakCelsius,
  verdict,
}: Pick<
  HeatAnswer['exposures'][number],
  'distanceMm' | 'peakCelsius' | 'verdict'
>): HeatPicture['marks'][number] {
  return {
    distanceMm,
    ...(peakCelsius === undefined ? {} : { peakCelsius }),
    label: [
      formatQuantity(distanceMm, 'mm'),
      ...(peakCelsius === undefined ? [] : [formatQuantity(peakCelsius, '°C')]),
      verdict,
    ].join(', '),
  };
}

/** The heat sinks of these heats, each once. */
function sinksOf(heats: readonly HeldHeat[]): readonly PictureSink[] {
  const sinks = new Map<string, PictureSink>();
  for (const { wetCloth, copperBar } of heats) {
    const where = wetCloth ?? copperBar;
    if (where === undefined) continue;
    const { fromMm, toMm } = where;
    const name = wetCloth === undefined ? 'copper bar' : 'wet cloth';
    const label = `${name} from ${formatQuantity(fromMm, 'mm')} to ${formatQuantity(toMm, 'mm')}`;
    sinks.set(label, { fromMm, toMm, label });
  }
  return [...sinks.values()];
}

/** The picture of a seam without a plan. */
export function seamPicture({
  curve,
  limit,
  victim,
  clear,
  exposures,
  question,
  heatInput,
}: SeamAnswer): HeatPicture {
  const input = heatInput.ok ? `, ${formatQuantity(Number(heatInput.value.toFixed(3)), 'kJ/mm')}` : '';
  return {
    title: `Heat beside the seam: ${question.joint.method ?? 'arc'}, ${question.thickness.trim()} sheet${input}`,
    from: 'fused metal',
    curves: [{ label: 'one seam', curve }],
    limits: limitLines(limit, victim),
    marks: question.distancesMm === undefined ? [] : exposures.map(markOf),
    ...(clear.ok && clear.distanceMm > 0 ? { clearMm: clear.distanceMm } : {}),
  };
}

/** One heat of a plan in a few words: `Front rail, left, heating: induction, 600 °C for 30 s, once, 1.2 mm steel`. */
export function plannedTitle({ runs: [first], seam, part, what, source }: PlannedHeat): string {
  const about = [part, what].filter((word) => word !== undefined).join(', ');
  return `${about}${first === undefined ? seamWords(seam) : `: ${heatWords(first.heat, source)}`}`;
}

/** The picture of one heat of a plan, its neighbours as marks. */
export function plannedPicture(heat: PlannedHeat, file: string): HeatPicture {
  const { runs, seam, neighbours } = heat;
  const clears = neighbours.flatMap(({ clear }) =>
    clear.ok && clear.rule === undefined ? [clear.distanceMm] : [],
  );
  const [clearMm] = clears;
  return {
    title: `${file}: ${plannedTitle(heat)}`,
    ...(seam === undefined ? {} : { from: 'fused metal' }),
    curves: [
      ...runs.map(({ heat, curve }) => ({ label: curveLabel(heat), curve })),
      ...(seam === undefined ? [] : [{ label: 'the hottest seam', curve: seam.curve }]),
    ],
    limits: distinctLimits(neighbours),
    sinks: sinksOf(runs.map(({ heat }) => heat)),
    marks: neighbours.flatMap((one) =>
      one.distanceMm === undefined
        ? []
        : [
            {
              distanceMm: one.distanceMm,
              ...(one.peakCelsius === undefined ? {} : { peakCelsius: one.peakCelsius }),
              label: neighbourLabel(one),
            },
          ],
    ),
    times: neighbours.flatMap((one) =>
      one.history === undefined ? [] : [{ label: neighbourLabel(one), history: one.history }],
    ),
    // Of several neighbours each has its own; only one can be the line of the picture.
    ...(clears.length === 1 && clearMm !== undefined && clearMm > 0 ? { clearMm } : {}),
  };
}

/** The figures of a seam, for a title or a line of text; empty where none is known. */
export function seamWords(seam: PlannedHeat['seam']): string {
  if (seam === undefined) return '';
  const { heatInputKJPerMm: input, zoneWidthMm: width, coolingSeconds: cooling } = seam;
  const words = [
    input === undefined ? undefined : `heat input ${formatQuantity(Number(input.toFixed(3)), 'kJ/mm')}`,
    width === undefined
      ? undefined
      : `past 720 °C up to ${formatQuantity(Number(width.toFixed(1)), 'mm')} beside it`,
    cooling === undefined
      ? undefined
      : `800 to 500 °C in the order of ${formatQuantity(Math.round(cooling), 's')}`,
  ].filter((word) => word !== undefined);
  return words.length === 0 ? '' : `: ${words.join(', ')}`;
}

function neighbourLabel({ name, distanceMm, peakCelsius, verdict }: HeatedNeighbour): string {
  const numbers = [
    distanceMm === undefined ? undefined : formatQuantity(distanceMm, 'mm'),
    peakCelsius === undefined ? undefined : formatQuantity(peakCelsius, '°C'),
    verdict,
  ];
  return `${name}: ${numbers.filter((one) => one !== undefined).join(', ')}`;
}

/** One line for each temperature; what is limited by the same one shares it. */
function distinctLimits(neighbours: readonly HeatedNeighbour[]): readonly PictureLimit[] {
  const labels = new Map<number, Map<string, Set<string>>>();
  const add = (celsius: number | undefined, what: string, victim: string): void => {
    if (celsius === undefined) return;
    const here = labels.get(celsius) ?? new Map<string, Set<string>>();
    labels.set(celsius, here.set(what, (here.get(what) ?? new Set()).add(victim)));
  };
  for (const { limitCelsius, stopLimitCelsius, victim } of neighbours) {
    const name = victim ?? 'a neighbour';
    add(limitCelsius, 'limit of', name);
    if (stopLimitCelsius !== limitCelsius) add(stopLimitCelsius, 'stop for', name);
  }
  const told = (groups: ReadonlyMap<string, ReadonlySet<string>>): string =>
    [...groups].map(([what, names]) => `${what} ${[...names].join(', ')}`).join('; ');
  return [...labels].map(([celsius, groups]) => ({ celsius, label: told(groups) }));
}

/** Two heats that differ by a heat sink alone need telling apart. */
function curveLabel(heat: HeldHeat): string {
  const [sink] = sinksOf([heat]);
  return `${thickness(heat.thicknessMm)}${sink === undefined ? '' : `, ${sink.label}`}`;
}

function thickness(thicknessMm: number): string {
  return `${formatQuantity(thicknessMm, 'mm')} sheet`;
}
