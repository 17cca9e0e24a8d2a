import type { Joint } from '../../generated/plan-types.ts';
import { margin } from '../../joint/margin.ts';
import { offWindow, windowsFor } from '../../joint/weld-window.ts';
import type { OffWindow, WeldWindow } from '../../joint/weld-window.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import type { WeldWindows } from '../context.ts';
import type { Fact } from '../fact.ts';
import type { JointStack } from './joint-stack.ts';
import { computed, computedOr, statedOr } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey } from '../survey.ts';

type SettingsFact =
  | 'joint.spot_settings_stated'
  | 'joint.arc_settings_stated'
  | 'joint.settings_off'
  | 'joint.tip_short'
  | 'joint.machine_ability_stated'
  | 'joint.force_beyond_machine'
  | 'joint.current_beyond_machine'
  | `joint.${'machine_force' | 'mild_sheet_force' | 'machine_force_factor' | 'set_force_factor'}`;

type Settings = NonNullable<Joint['settings']>;

/** What the machine is set to and what it can give, beside what is usual for such sheets. */
export function settingsFacts(
  windows: WeldWindows,
  { joint, at }: JointSurvey,
  stack: JointStack,
): Readonly<Record<SettingsFact, Fact>> {
  const place = `${at}/settings`;
  const settings: Settings = joint.settings ?? {};
  const fitting = fittingWindows(windows, stack);
  const force = quantityOf(settings.force, 'force');
  const current = quantityOf(settings.current, 'current');
  const time = quantityOf(settings.weld_time, 'time');
  const mostForce = quantityOf(settings.most_force, 'force');
  const mostCurrent = quantityOf(settings.most_current, 'current');
  const off = offWindow(
    {
      ...(force === undefined ? {} : { forceKn: force }),
      ...(current === undefined ? {} : { currentKa: current }),
      ...(time === undefined ? {} : { timeS: time }),
    },
    fitting,
  );
  const byProgram = settings.machine !== undefined && settings.program !== undefined;
  const byNumbers = force !== undefined && current !== undefined && time !== undefined;
  return {
    'joint.spot_settings_stated': computed(byProgram || byNumbers, place),
    'joint.arc_settings_stated': computed(
      byProgram || (joint.filler !== undefined && joint.gas !== undefined),
      place,
    ),
    'joint.settings_off': computedOr(
      off.length === 0 ? undefined : off.map((one) => tellOff(one, settings)).join('; '),
      place,
      'No setting is known to lie outside what is usual.',
    ),
    'joint.tip_short': computedOr(
      difference(leastOf(fitting.flatMap(({ tipMm }) => tipMm ?? [])), quantityOf(settings.tip, 'length')),
      `${place}/tip`,
      'The electrode face is not stated, or what is usual for such sheets is not known.',
    ),
    'joint.machine_ability_stated': computed(mostForce !== undefined && mostCurrent !== undefined, place),
    'joint.force_beyond_machine': computedOr(
      difference(force, mostForce),
      `${place}/force`,
      'The force, or the most that the gun gives, is not stated.',
    ),
    'joint.current_beyond_machine': computedOr(
      difference(current, mostCurrent),
      `${place}/current`,
      'The current, or the most that the machine gives, is not stated.',
    ),
    ...forceFacts(windows, stack, { place, force, mostForce }),
  };
}

/**
 * What the gun gives, and is set to, beside the least that low-carbon sheet of the thickness asks for; zinc-coated where it is not known
 * to be bare, since a coat asks for more. Strong steel asks for more again: how much is for the rules.
 */
function forceFacts(
  windows: WeldWindows,
  stack: JointStack,
  { place, force, mostForce }: { place: string; force: number | undefined; mostForce: number | undefined },
): Pick<
  Record<SettingsFact, Fact>,
  `joint.${'machine_force' | 'mild_sheet_force' | 'machine_force_factor' | 'set_force_factor'}`
> {
  const coat = coatsOf(stack).at(-1) ?? 'zinc';
  const least = leastOf(windowsOf(windows, stack, [coat]).map((window) => window.force.min));
  const factor = (own: number | undefined, key: 'force' | 'most_force'): Fact =>
    computedOr(
      own === undefined || least === undefined ? undefined : own / least,
      `${place}/${key}`,
      'The force is not stated, or what such sheets ask for is not known.',
    );
  return {
    'joint.machine_force': statedOr(
      mostForce,
      `${place}/most_force`,
      'The most that the gun gives is not stated.',
    ),
    'joint.mild_sheet_force': computedOr(
      least,
      `${place}/most_force`,
      'What such sheets ask for is not known.',
    ),
    'joint.machine_force_factor': factor(mostForce, 'most_force'),
    'joint.set_force_factor': factor(force, 'force'),
  };
}

/** Of the last pack that has one for such sheets. Where the coat is not known, those of either. */
function fittingWindows(windows: WeldWindows, stack: JointStack): readonly WeldWindow[] {
  return windowsOf(windows, stack, coatsOf(stack));
}

function windowsOf(
  windows: WeldWindows,
  { governing }: JointStack,
  coats: readonly WeldWindow['coat'][],
): readonly WeldWindow[] {
  if (!governing.ok) return [];
  for (const layer of windows) {
    const found = coats.flatMap((coat) => windowsFor(layer, governing.value, coat));
    if (found.length > 0) return found;
  }
  return [];
}

/** One zinc-coated sheet makes a joint of coated sheet. */
function coatsOf({ sheets }: JointStack): readonly WeldWindow['coat'][] {
  const coats = sheets.map((sheet) => sheet?.material.coating ?? sheet?.part.coating);
  if (coats.some((coat) => coat?.startsWith('zinc') === true)) return ['zinc'];
  return coats.every((coat) => coat === 'none') ? ['bare'] : ['bare', 'zinc'];
}

/** The setting as it is written, since a slip of the unit would round to nothing. */
function tellOff({ what, window: { min, max } }: OffWindow, settings: Settings): string {
  const show = (number: number): string => {
    if (what === 'time') return formatQuantity(number * 1000, 'ms', 0);
    return formatQuantity(number, what === 'force' ? 'kN' : 'kA', 1);
  };
  return `${what} ${settings[keys[what]] ?? ''} (usual ${show(min)} to ${show(max)})`;
}

const keys = { force: 'force', current: 'current', time: 'weld_time' } as const;

function difference(one: number | undefined, other: number | undefined): number | undefined {
  return one === undefined || other === undefined ? undefined : margin(one, other);
}

function leastOf(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : Math.min(...values);
}
