import { saidInClause } from '../plan/said-in-clause.ts';
import type { Survey } from './survey.ts';

/** What does not work as the vehicle came, and the words by which a part or a code answers for it. English alone is read. */
interface Trouble {
  readonly says: RegExp;
  readonly answers: RegExp;
}

const troubles: readonly Trouble[] = [
  {
    says: /\b(?:isolation|insulation) (?:fault|error|failure|warning)|\b(?:battery|high[- ]voltage) (?:fault|error|failure|warning)\b/i,
    answers: /\b(?:isolation|insulation|high[- ]voltage)\b/i,
  },
  {
    says: /\bbrake(?:s| pedal)? (?:\w+ ){0,2}?(?:sinks?|sank|soft|spongy|to the floor|pulls?|bind(?:s|ing)?|grind(?:s|ing)?|locks?|leaks?|fail(?:s|ed)?|does not|do not)\b|\bno brakes?\b|\bbrake fluid (?:is )?(?:lost|leaks?|low|gone)\b/i,
    answers: /\b(?:brakes?|braking|caliper|master cylinder|abs)\b/i,
  },
  {
    says: /\bsteering(?: wheel)? (?:\w+ ){0,2}?(?:locks|locked|loose|slack|jam(?:s|med)?|bind(?:s|ing)?|stiff|heavy|knocks|play|sticks|does not)\b|\bplay in the steering\b/i,
    answers: /\b(?:steering|rack|track rod|tie rod|column|knuckle)\b/i,
  },
];

/** What the plan says does not work as the vehicle came, and what no part that is worked on and no code answers for. */
export function troubleOnArrival(survey: Survey): string | undefined {
  const works = survey.plan.job?.as_received?.works;
  if (works === undefined) return undefined;
  for (const { says, answers } of troubles) {
    const told = saidInClause(works, says);
    if (told !== undefined && !isAnswered(survey, answers)) return told;
  }
  return undefined;
}

function isAnswered({ plan, operations }: Survey, answers: RegExp): boolean {
  const condition = plan.make_safe?.high_voltage?.battery_condition;
  return (
    operations.some(({ operation, part }) => operation.do !== 'leave' && answers.test(part.name)) ||
    (plan.verify?.scan_before?.codes ?? []).some(({ system, explanation }) =>
      answers.test(`${system ?? ''} ${explanation ?? ''}`),
    ) ||
    (answers.test('isolation') && condition !== undefined && condition !== 'sound')
  );
}
