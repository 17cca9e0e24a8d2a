import { paintWith } from '../report/paint.ts';
import { textWidth } from '../report/text-width.ts';
import { visibleText } from '../report/visible-text.ts';
import { wrapText } from '../report/wrap-text.ts';
import { byCategory } from './mark-json.ts';
import { markCautions, percentText, pointsText } from './mark-report.ts';
import type { MarkReport, StudentReport } from './mark-report.ts';

export interface MarkTextOptions {
  readonly colour: boolean;
  readonly columns: number;
}

const indent = '  ';
const mostMistakes = 10;

/** The marks as plain text: a block a student, then the class. */
export function markText(report: MarkReport, { colour, columns }: MarkTextOptions): string {
  const { strong } = paintWith(colour);
  const title = report.scenario.title ?? report.scenario.id;
  const head = [
    strong(visibleText(title)),
    ...wrapText(
      visibleText(
        `${pointsText(report.of)} points; passed from ${percentText(report.passShare)}, and only where nothing stops the plan. Judged at stage ${report.stage} as of ${report.asOf} by ${report.packs.join(', ')}.`,
      ),
      columns,
      indent,
    ),
  ].join('\n');
  return `${[head, ...report.students.map((one) => student(one, columns, strong)), classBlock(report, columns, strong), wrapText(markCautions, columns, '').join('\n')].join('\n\n')}\n`;
}

function student(
  { marks, feedback }: StudentReport,
  columns: number,
  strong: (text: string) => string,
): string {
  const result = !marks.judged
    ? 'not marked'
    : `${pointsText(marks.points)} of ${pointsText(marks.of)} points, ${marks.passed ? 'passed' : marks.unsafe ? 'not passed: not safe' : 'not passed'}`;
  const own = Object.entries(byCategory(marks)).map(
    ([category, { points, of }]) => `${category} ${pointsText(points)}/${pointsText(of)}`,
  );
  return [
    `${strong(visibleText(marks.name))}: ${result}`,
    ...(own.length === 0 ? [] : wrapText(own.join(', '), columns, indent)),
    ...feedback.flatMap((line) => wrapText(visibleText(line), columns, `${indent}  `, `${indent}- `)),
  ].join('\n');
}

function classBlock(report: MarkReport, columns: number, strong: (text: string) => string): string {
  const { statistics, passed, notMarked, mistakes, identical } = report.class;
  const lines = [strong('The class')];
  const say = (text: string): void => {
    lines.push(...wrapText(visibleText(text), columns, indent));
  };
  say(
    `${String(report.students.length)} ${report.students.length === 1 ? 'plan' : 'plans'}, ${String(passed)} passed${notMarked === 0 ? '' : `, ${String(notMarked)} not marked`}.`,
  );
  if (statistics !== undefined) {
    say(
      `Points: mean ${percentText(statistics.mean)}, median ${percentText(statistics.median)}, quartiles ${percentText(statistics.lowerQuartile)} and ${percentText(statistics.upperQuartile)}, lowest ${percentText(statistics.lowest)}, highest ${percentText(statistics.highest)}.`,
    );
    lines.push(...histogram(statistics.tenths, columns));
  }
  if (mistakes.length > 0) lines.push('', `${indent}Most common:`);
  for (const { mistake, students } of mistakes.slice(0, mostMistakes))
    lines.push(
      ...wrapText(
        `${String(students).padStart(3)}  ${visibleText(mistake)}`,
        columns,
        `${indent}     `,
        indent,
      ),
    );
  if (mistakes.length > mostMistakes) say(`and ${String(mistakes.length - mostMistakes)} more.`);
  for (const group of identical)
    say(
      `${group.join(', ')}: these plans say the same, word for word. That may have many reasons; look at it.`,
    );
  if (report.leftOut.length > 0) say(`Not marked: ${report.leftOut.join('; ')}`);
  return lines.join('\n');
}

/** A bar a tenth of the points, as long as the line takes. */
function histogram(tenths: readonly number[], columns: number): readonly string[] {
  const most = Math.max(1, ...tenths);
  return tenths.map((count, index) => {
    const label = `${String(index * 10).padStart(3)} to ${String(index * 10 + 10).padStart(3)} %  `;
    const room = columns - indent.length - textWidth(label) - 5;
    const bar = '#'.repeat(Math.round((count / most) * Math.min(room, 40)));
    return `${indent}${label}${bar}${count === 0 ? '' : ` ${String(count)}`}`.trimEnd();
  });
}
