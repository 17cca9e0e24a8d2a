import type { Asked } from '../generated/key-types.ts';
import type { FaultList } from '../packs/reading/fault-list.ts';
import type { Dimension } from '../quantity/dimension.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { askedNames, askedOf, isAskedName } from './asked-names.ts';
import { checkWord } from './check-word.ts';
import type { KeyQuestion, RightNumber, RightWords } from './key.ts';

/** A number or word that a key asks for; undefined when it cannot be asked, which is told. */
export function readKeyQuestion(stated: Asked, pointer: string, list: FaultList): KeyQuestion | undefined {
  const { of, points } = stated;
  if (!isAskedName(of)) {
    const known = Object.keys(askedNames);
    list.at(
      `${pointer}/of`,
      `A key cannot ask for \`${of}\`; it can for ${known.join(', ')}.`,
      list.nearest(of, known),
    );
    return undefined;
  }
  const asked = askedOf(of);
  const right =
    'words' in asked
      ? rightWords(stated, asked.words, pointer, list)
      : rightNumber(stated, asked.measure, pointer, list);
  if (right === undefined) return undefined;
  return {
    of,
    points,
    right,
    ...(stated.why === undefined ? {} : { why: stated.why }),
    ...(stated.look_at === undefined ? {} : { lookAt: stated.look_at }),
  };
}

function rightWords(
  stated: Asked,
  words: readonly [string, ...string[]],
  pointer: string,
  list: FaultList,
): RightWords | undefined {
  for (const name of ['value', 'within', 'nearly'] as const) {
    if (stated[name] !== undefined)
      list.at(`${pointer}/${name}`, `\`${stated.of}\` is a word: \`accept\` lists the right ones.`, [], true);
  }
  if (stated.accept === undefined) {
    list.at(pointer, '`accept` is missing here: the words that are right.');
    return undefined;
  }
  stated.accept.forEach((word, index) => {
    checkWord(word, words, `${pointer}/accept/${String(index)}`, list);
  });
  return { words: stated.accept };
}

function rightNumber(
  stated: Asked,
  measure: Dimension | 'count',
  pointer: string,
  list: FaultList,
): RightNumber | undefined {
  if (stated.accept !== undefined)
    list.at(`${pointer}/accept`, `\`${stated.of}\` is a number: \`value\` is the right one.`, [], true);
  if (stated.value === undefined) {
    list.at(pointer, '`value` is missing here: the number that is right.');
    return undefined;
  }
  const value = number(stated.value, measure, `${pointer}/value`, list);
  if (value === undefined) return undefined;
  const within =
    stated.within === undefined ? 0 : distance(stated.within, value, measure, `${pointer}/within`, list);
  const nearly =
    stated.nearly === undefined
      ? undefined
      : distance(stated.nearly.within, value, measure, `${pointer}/nearly/within`, list);
  if (within === undefined) return undefined;
  return {
    value,
    text: String(stated.value),
    within,
    ...(nearly === undefined || stated.nearly === undefined
      ? {}
      : { nearly: { within: nearly, points: stated.nearly.points } }),
  };
}

function number(
  stated: string | number,
  measure: Dimension | 'count',
  pointer: string,
  list: FaultList,
): number | undefined {
  if (measure === 'count') {
    if (typeof stated === 'number' && Number.isInteger(stated) && stated >= 0) return stated;
    list.at(pointer, 'A count is a whole number without a unit.');
    return undefined;
  }
  const reading = readQuantity(String(stated), measure);
  if (reading.ok) return reading.value;
  list.at(pointer, reading.reason);
  return undefined;
}

/** How far from the right value, in its unit: a percentage of it, or a quantity; ten degrees more are not ten degrees. */
function distance(
  stated: string | number,
  value: number,
  measure: Dimension | 'count',
  pointer: string,
  list: FaultList,
): number | undefined {
  if (typeof stated === 'string' && stated.includes('%')) {
    const share = readQuantity(stated, 'percent');
    if (share.ok) return Math.abs((value * share.value) / 100);
    list.at(pointer, share.reason);
    return undefined;
  }
  return number(stated, measure === 'temperature' ? 'temperature difference' : measure, pointer, list);
}
