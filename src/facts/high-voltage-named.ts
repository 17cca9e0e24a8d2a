import type { Plan } from '../generated/plan-types.ts';

/** The first thing that a plan names and only a vehicle with traction voltage has, as a phrase. */
export function highVoltageNamed(plan: Plan): string | undefined {
  return nameOfPart(plan) ?? nameOfStep(plan);
}

function nameOfPart({ parts }: Plan): string | undefined {
  for (const { kind, holds, operations } of parts) {
    const words = [
      kind,
      ...(holds ?? []),
      ...(operations ?? []).flatMap(({ near }) => near ?? []).map(({ item }) => item),
    ];
    const found = words.find((word) => word === 'traction battery' || word === 'high-voltage cable');
    if (found !== undefined) return `a ${found}`;
  }
  return undefined;
}

function nameOfStep({ make_safe: makeSafe, verify, finish }: Plan): string | undefined {
  if (saysSomething(makeSafe?.high_voltage)) return 'the making safe of traction voltage';
  if (saysSomething(verify?.high_voltage)) return 'the re-commissioning of traction voltage';
  const { traction_battery: battery, battery_limit: limit } = finish?.bake ?? {};
  return battery === undefined && limit === undefined ? undefined : 'a traction battery in the bake';
}

/** A block that only says that it is not planned names nothing. */
function saysSomething(
  block: { readonly planned?: boolean | string; readonly done?: string } | undefined,
): boolean {
  return block !== undefined && !(block.planned === false && block.done === undefined);
}
