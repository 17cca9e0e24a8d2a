import { builtInPacks } from '../src/generated/built-in-packs.ts';
import { deriveFacts } from '../src/facts/derive-facts.ts';
import type { Fact } from '../src/facts/fact.ts';
import { lookUp } from '../src/facts/sheet.ts';
import type { FactSheet, SheetKind } from '../src/facts/sheet.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../src/facts/heat/strip-solver.ts';
import { resolvePacks } from '../src/packs/layers/resolve-packs.ts';
import { checkPlan } from '../src/plan/check-plan.ts';
import { readYaml } from '../src/plan/read-yaml.ts';
import { readDate } from '../src/quantity/iso-date.ts';

/** Every sheet of a plan, those of deviations and sign-off too, as of 2026-10-21 with the general pack's limits. */
export function sheetsOf(text: string): readonly FactSheet[] {
  const yaml = readYaml(text);
  if (!yaml.ok) throw new Error(yaml.faults.map(({ sentence }) => sentence).join('\n'));
  const checked = checkPlan(yaml.root);
  if (!checked.ok) throw new Error(checked.faults.map(({ sentence }) => sentence).join('\n'));
  const packs = resolvePacks(builtInPacks(), undefined);
  const asOf = readDate('2026-10-21');
  if (!packs.ok || !asOf.ok) throw new Error('the built-in packs do not resolve');
  const { limits, practice, windows, tolerances, triggers, orders, makers } = packs.packs;
  const derived = deriveFacts(checked.plan, checked.faults, {
    asOfDay: asOf.day,
    stage: checked.plan.stage ?? 'release',
    limits,
    practice,
    windows,
    tolerances,
    triggers,
    orders,
    makers,
    solveStrip: rememberingStripSolver(),
    solveLap: rememberingLapSolver(),
  });
  return [...derived.sheets, ...derived.afterwards([]).sheets];
}

/** The fact of that name on the first sheet of its kind (and pointer, when given). */
export function factOn(sheets: readonly FactSheet[], kind: SheetKind, name: string, at?: string): Fact {
  const sheet = sheets.find((one) => one.kind === kind && (at === undefined || one.at === at));
  const fact = sheet === undefined ? undefined : lookUp(sheet, name);
  if (fact === undefined) throw new Error(`no ${name} on a ${kind} sheet`);
  return fact;
}
