import type { Operation } from '../generated/plan-types.ts';
import type { Decision, Forbidden } from '../generated/key-types.ts';
import type { KeyPart } from './key.ts';
import type { Mark } from './mark.ts';
import type { PartMatch } from './match-parts.ts';

/** What a plan decides on a part, against what the key accepts and forbids. */
export function markDecision(key: KeyPart, match: PartMatch | undefined): readonly Mark[] {
  const of = key.decisions[0]?.points ?? 0;
  const called = match === undefined ? key.name : nameOf(match);
  const more = {
    ...(key.why === undefined ? {} : { why: key.why }),
    ...(key.lookAt === undefined ? {} : { lookAt: key.lookAt }),
    answer: `Accepted: ${key.decisions.map(decisionText).join(', or ')}.${key.truth === undefined ? '' : ` What is there: ${key.truth}`}`,
  };
  if (match === undefined) {
    const leaves = key.decisions.find((one) => one.do === 'leave');
    if (leaves !== undefined) return [fullOrLess(key, leaves, called, more)];
    return [
      {
        category: 'decision',
        part: called,
        points: 0,
        of,
        mistake: `${key.name}: not in the plan`,
        said: `The plan does not speak of a part that the marks know as “${key.name}”. If it is there under another name, show it to your trainer.`,
        ...more,
      },
    ];
  }
  const operations = match.part.operations ?? [];
  const forbidden = forbiddenIn(key, operations);
  if (forbidden.length > 0)
    return forbidden.map((one, index) => unsafe(key, one, called, index === 0 ? of : 0));
  const best = key.decisions.find((decision) => isTaken(decision, operations));
  if (best !== undefined) return [fullOrLess(key, best, called, more)];
  const words = [...new Set(operations.map((one) => one.do ?? 'an operation without a known word'))];
  return [
    {
      category: 'decision',
      part: called,
      points: 0,
      of,
      mistake: `${key.name}: another decision`,
      said:
        words.length === 0
          ? `Nothing is decided for ${called}: say what is to be done with it, or that it is left and why.`
          : `For ${called} the plan says ${words.join(', ')}; that is not the decision that the key takes.`,
      ...more,
    },
  ];
}

/** What the plan does that the key forbids, each rule of the key once. */
export function forbiddenIn(
  key: KeyPart,
  operations: readonly Operation[],
): readonly { readonly rule: Forbidden; readonly word: string }[] {
  return key.mustNot.flatMap((rule) => {
    const word = rule.do.find((one) => operations.some((operation) => operation.do === one));
    return word === undefined ? [] : [{ rule, word }];
  });
}

function unsafe(
  key: KeyPart,
  { rule, word }: ReturnType<typeof forbiddenIn>[number],
  called: string,
  of: number,
): Mark {
  return {
    category: 'decision',
    part: called,
    points: 0,
    of,
    mistake: `${key.name}: ${word}`,
    said: `${called} must not get \`${word}\`; a plan with it cannot pass, however good the rest is.`,
    ...(rule.why === undefined ? {} : { why: rule.why }),
    ...(rule.look_at === undefined
      ? key.lookAt === undefined
        ? {}
        : { lookAt: key.lookAt }
      : { lookAt: rule.look_at }),
    answer: `Accepted: ${key.decisions.map(decisionText).join(', or ')}.`,
  };
}

function fullOrLess(
  key: KeyPart,
  { points, because, do: word }: Decision,
  part: string,
  more: Pick<Mark, 'why' | 'lookAt' | 'answer'>,
): Mark {
  const of = key.decisions[0]?.points ?? points;
  if (points >= of) return { category: 'decision', part, points, of };
  return {
    category: 'decision',
    part,
    points,
    of,
    mistake: `${key.name}: ${word}, where another decision is worth more`,
    said: `\`${word}\` is accepted for ${part}, and is not worth all the points.${because === undefined ? '' : ` ${because}`}`,
    ...more,
  };
}

function isTaken({ do: word, extent }: Decision, operations: readonly Operation[]): boolean {
  if (word === 'leave' && operations.length === 0) return true;
  return operations.some(
    (operation) => operation.do === word && (extent === undefined || operation.extent === extent),
  );
}

function decisionText({ do: word, extent }: Decision): string {
  return extent === undefined ? word : `${word}, ${extent}`;
}

/** What the student calls a part, in so many letters that a line takes. */
export function nameOf({ part, index }: Pick<PartMatch, 'part' | 'index'>): string {
  return part.name ?? part.id ?? `part ${String(index + 1)}`;
}
