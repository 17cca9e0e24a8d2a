import type { HeatAnswer } from '../../facts/heat/heat-question.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { packWords } from '../judged-by.ts';
import type { HeatAnswerReport } from './heat-report.ts';

type ClearAnswer = Pick<HeatAnswer, 'clear' | 'victim' | 'keepOff' | 'limit' | 'leastTensileLeft'>;

/** How far to stay away, in one sentence. */
export function clearSentence(
  answer: ClearAnswer,
  { near, limitSource, rulePack }: Pick<HeatAnswerReport, 'near' | 'limitSource' | 'rulePack'>,
): string {
  const { clear, victim, keepOff } = answer;
  const name = near === victim ? near : `${near} (${victim})`;
  const limit = limitWords(answer);
  const source = limitSource === undefined ? '' : ` (${limitSource})`;
  if (!clear.ok) return `No stay-clear distance for ${name}: ${clear.reason}`;
  if (clear.rule !== undefined) {
    const why = limit === '' ? 'no temperature is set that it stands' : `the limit of ${limit} is kept there`;
    return `Stay ${formatQuantity(clear.distanceMm, 'mm')} clear of ${name} or take it off: nearer, rule ${clear.rule} of pack ${rulePack} stops the work; ${why}${source}.`;
  }
  const rule =
    keepOff === undefined
      ? ''
      : ` Rule ${keepOff.rule} asks for ${formatQuantity(keepOff.distanceMm, 'mm')} whatever the heat.`;
  if (clear.distanceMm === 0)
    return `No distance is needed: ${name} stands this heat itself; its limit is ${limit}${source}.${rule}`;
  return `Stay ${formatQuantity(clear.distanceMm, 'mm')} clear: from there on ${name} keeps its limit of ${limit}${source}.${rule}`;
}

function limitWords({ limit, leastTensileLeft }: ClearAnswer): string {
  const { holdAboveCelsius: hold, timeAbove } = limit;
  const words = [
    hold === undefined ? undefined : formatQuantity(hold, '°C'),
    timeAbove === undefined
      ? undefined
      : `at most ${formatQuantity(timeAbove.atMostSeconds, 's')} above ${formatQuantity(timeAbove.celsius, '°C')}`,
    leastTensileLeft === undefined
      ? undefined
      : `at least ${formatQuantity(leastTensileLeft, '%')} of its strength left`,
  ];
  return words.filter((word) => word !== undefined).join(', ');
}

/** Which packs set the limits. */
export function packsSentence({ packs, planish }: Pick<HeatAnswerReport, 'packs' | 'planish'>): string {
  return `Limits by ${packs.map(packWords).join('; ')}; planish ${planish}.`;
}
