import type { JointMethod } from '../../generated/plan-types.ts';
import { rowRatio, rowShear } from '../../joint/row.ts';
import type { Row, RowStack } from '../../joint/row.ts';
import { crossTension, shearFormA, shearFormB } from '../../joint/spot-strength.ts';
import type { Fact } from '../fact.ts';
import { isResistance } from './joint-methods.ts';
import { diametersOf } from './joint-button.ts';
import { ofSized } from './joint-stack.ts';
import type { JointStack } from './joint-stack.ts';
import { assumed, computed, stated, unknown } from '../make-fact.ts';
import type { JointSurvey } from '../survey.ts';

type RowFact =
  | 'joint.factory_method'
  | 'joint.row_ratio'
  | 'joint.row_load'
  | 'joint.factory_load'
  | 'joint.spot_shear'
  | 'joint.spot_peel';

const sum = 'EN 1993-1-3, spot welds in shear, from memory; every joint at full credit.';

/** What the new row bears beside the factory’s. How much of it a repair joint is credited with is for a rule to say. */
export function rowFacts(one: JointSurvey, stack: JointStack): Readonly<Record<RowFact, Fact>> {
  const { joint, at } = one;
  const before = factoryMethod(one);
  const place = `${at}/count`;
  const noCount = 'The number of joints, or that of the factory, is not stated.';
  const load = (count: number | undefined, row: Omit<Row, 'count'> | undefined): Fact => {
    if (count === undefined) return unknown(noCount, place);
    const full = loadedStack(stack);
    if (row === undefined) return unknown('Only spots and plugs are summed up.', place);
    return full === undefined
      ? unknown('A thickness or a strength of the stack is not known.', place)
      : ofSized(rowShear({ count, ...row }, full), place, sum);
  };
  return {
    'joint.factory_method': before,
    'joint.row_ratio': ratioOf(one, stack),
    'joint.row_load': load(joint.count, madeRow(one)),
    'joint.factory_load': load(joint.factory_count, rowOf(methodBefore(one))),
    'joint.spot_shear': spotShear(stack),
    'joint.spot_peel': stack.governing.ok
      ? ofSized(crossTension(stack.governing.value), `${at}/sheets`, 'AWS D8.1M, from memory.')
      : unknown(stack.governing.reason, at),
  };
}

function methodBefore({ joint }: JointSurvey): JointMethod | undefined {
  return joint.factory_method ?? ((joint.factory_count ?? 0) > 0 ? 'resistance spot' : undefined);
}

function factoryMethod(one: JointSurvey): Fact {
  const { joint, at } = one;
  if (joint.factory_method !== undefined) return stated(joint.factory_method, `${at}/factory_method`);
  const taken = methodBefore(one);
  return taken === undefined
    ? unknown('How the factory joined it is not stated.', `${at}/factory_method`)
    : assumed(taken, 'How the factory joined it is not stated; spots were taken.', `${at}/factory_method`);
}

function ratioOf(one: JointSurvey, stack: JointStack): Fact {
  const { joint, at } = one;
  const place = `${at}/count`;
  const { count, factory_count: factoryCount, method } = joint;
  if (method === undefined) return unknown('How it is joined is not stated.', place);
  if (factoryCount === 0) return unknown('The factory put no row there.', place);
  if (count === undefined || factoryCount === undefined) {
    return unknown('The number of joints, or that of the factory, is not stated.', place);
  }
  const before = methodBefore(one);
  const [made, factory] = [madeRow(one), rowOf(before)];
  const byNumber = assumed(
    count / factoryCount,
    'By number: every joint taken to be as strong as one of the factory.',
    place,
  );
  if (made === undefined || factory === undefined) {
    return before === method
      ? byNumber
      : unknown(
          `${count} ${count === 1 ? 'joint' : 'joints'} by ${method} cannot be set against ${factoryCount} by ${before ?? 'another'}: only the maker’s page tells.`,
          place,
        );
  }
  if (stack.thicknessesMm !== undefined && stack.governing.ok) {
    const ratio = rowRatio(
      { count, ...made },
      { count: factoryCount, ...factory },
      sizesOf(stack.governing.value, stack.thicknessesMm),
    );
    return ofSized(ratio, place, sum);
  }
  return made.kind === factory.kind ? byNumber : unknown('A thickness of the stack is not known.', place);
}

function madeRow(one: JointSurvey): Omit<Row, 'count'> | undefined {
  const row = rowOf(one.joint.method);
  const { asked, measured } = diametersOf(one);
  const known = [asked, measured].filter((mm) => mm !== undefined);
  return row?.kind !== 'spot' || known.length === 0 ? row : { kind: 'spot', buttonMm: Math.min(...known) };
}

function rowOf(method: JointMethod | undefined): Omit<Row, 'count'> | undefined {
  if (method === undefined) return undefined;
  if (method === 'plug weld') return { kind: 'plug' };
  return isResistance(method) ? { kind: 'spot' } : undefined;
}

function sizesOf(governingMm: number, thicknessesMm: readonly number[]): Omit<RowStack, 'tensileMpa'> {
  return { governingMm, thinnerMm: governingMm, thickerMm: Math.max(governingMm, ...thicknessesMm) };
}

function loadedStack({ governing, thicknessesMm, tensilesMpa }: JointStack): RowStack | undefined {
  if (!governing.ok || thicknessesMm === undefined || tensilesMpa === undefined) return undefined;
  return { tensileMpa: Math.min(...tensilesMpa), ...sizesOf(governing.value, thicknessesMm) };
}

function spotShear({ governing, tensilesMpa, at }: JointStack): Fact {
  const place = `${at}/sheets`;
  if (!governing.ok) return unknown(governing.reason, place);
  if (tensilesMpa === undefined) return unknown('A strength of the stack is not known.', place);
  const weaker = Math.min(...tensilesMpa);
  const formA = shearFormA(weaker, governing.value);
  if (formA.ok) return computed(formA.value, place, 'AWS C1.1 form, 350 to 700 MPa.');
  return ofSized(shearFormB(weaker, governing.value), place, 'AWS D8.1M form, coefficients from memory.');
}
