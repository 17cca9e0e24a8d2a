import type { Asked, Decision, KeyPart as StatedPart } from '../generated/key-types.ts';
import type { FaultList } from '../packs/reading/fault-list.ts';
import { checkWord } from './check-word.ts';
import { readKeyQuestion } from './read-key-question.ts';
import type { KeyPart, KeyQuestion } from './key.ts';

/** One part of a key; what cannot be right in it is told. */
export function readKeyPart(stated: StatedPart, pointer: string, list: FaultList): KeyPart {
  const { name, also = [], kind, side, truth, decisions, must_not: mustNot = [], citation } = stated;
  if (kind !== undefined) checkWord(kind, ['part_kind'], `${pointer}/kind`, list);
  if (side !== undefined) checkWord(side, ['side'], `${pointer}/side`, list);
  decisions.forEach((one, index) => {
    checkWord(one.do, ['operation_word'], `${pointer}/decisions/${String(index)}/do`, list);
  });
  mustNot.forEach((one, index) => {
    one.do.forEach((word, at) => {
      checkWord(word, ['operation_word'], `${pointer}/must_not/${String(index)}/do/${String(at)}`, list);
    });
  });
  return {
    name,
    also,
    ...(kind === undefined ? {} : { kind }),
    ...(side === undefined ? {} : { side }),
    ...(truth === undefined ? {} : { truth }),
    decisions: bestFirst(decisions),
    mustNot,
    ...(citation === undefined ? {} : { citation }),
    asked: questions(stated.asked ?? [], `${pointer}/asked`, list),
    ...(stated.why === undefined ? {} : { why: stated.why }),
    ...(stated.look_at === undefined ? {} : { lookAt: stated.look_at }),
  };
}

function bestFirst(decisions: readonly Decision[]): readonly Decision[] {
  return decisions.toSorted((a, b) => b.points - a.points);
}

function questions(asked: readonly Asked[], pointer: string, list: FaultList): readonly KeyQuestion[] {
  return asked.flatMap((one, index) => {
    const question = readKeyQuestion(one, `${pointer}/${String(index)}`, list);
    return question === undefined ? [] : [question];
  });
}
