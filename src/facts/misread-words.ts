import type { AxisSlip, MisreadSet } from '../measure/misread-set.ts';
import type { MisreadPoint } from '../measure/misread-point.ts';

/** What a set of readings looks like, for a sentence that goes on after "the readings". */
export function misreadSetWords(misread: MisreadSet): string {
  if (misread.kind === 'unit') return unitWords(misread.factor, 'are', 'all');
  const { how } = misread;
  return how === undefined
    ? 'are mirrored: their axes are of the other hand'
    : `are mirrored: ${axisWords(how)}`;
}

/** What one reading looks like, for a sentence that goes on after its name. */
export function misreadPointWords(misread: MisreadPoint & { readonly otherName?: string }): string {
  switch (misread.kind) {
    case 'unit':
      return `it ${unitWords(misread.factor, 'is', 'here')}`;
    case 'digit':
      return `it has ${misread.axis} ten times too ${misread.factor > 1 ? 'small' : 'large'}`;
    case 'swapped':
      return `it was read at the place of ${misread.otherName ?? 'another point'}, and that one here`;
    case 'sign':
    case 'exchanged':
      return axisWords(misread);
  }
}

function axisWords(slip: AxisSlip): string {
  return slip.kind === 'sign'
    ? `${slip.axis} bears the wrong sign`
    : `${slip.axes[0]} and ${slip.axes[1]} are exchanged`;
}

const unitNames: ReadonlyMap<number, string> = new Map([
  [25.4, 'inches written as millimetres'],
  [10, 'centimetres written as millimetres, or a digit short'],
  [100, 'decimetres written as millimetres, or two digits short'],
  [1000, 'metres written as millimetres'],
]);

function unitWords(factor: number, verb: 'is' | 'are', all: 'all' | 'here'): string {
  const name = unitNames.get(factor);
  if (name !== undefined) return `${verb} ${name}`;
  const times = String(Math.round((1 / factor) * 10) / 10);
  return `${verb} ${all === 'all' ? 'all ' : ''}${times} times too large: millimetres written in another unit`;
}
