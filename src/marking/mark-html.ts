import { escaped } from '../report/escaped.ts';
import { pagePolicy } from '../report/page-policy.ts';
import { categories } from './category.ts';
import { byCategory } from './mark-json.ts';
import { markCautions, percentText, pointsText } from './mark-report.ts';
import type { MarkReport, StudentReport } from './mark-report.ts';
import { tenthsPicture } from './tenths-picture.ts';

/**
 * The class as one page that needs nothing else: table of students, picture of the points, the most common mistakes, and what is said
 * to each student. Whatever a student wrote is text here.
 */
export function markHtml(report: MarkReport): string {
  const title = `Marks: ${report.scenario.title ?? report.scenario.id}`;
  const { statistics, passed, notMarked, mistakes, identical } = report.class;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escaped(pagePolicy(style))}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
<main>
<h1>${escaped(title)}</h1>
<p>${escaped(`${pointsText(report.of)} points; passed from ${percentText(report.passShare)}, and only where nothing stops the plan. Judged at stage ${report.stage} as of ${report.asOf} by ${report.packs.join(', ')}; planish ${report.planish}.`)}</p>
<h2>The class</h2>
<p>${String(report.students.length)} plans, ${String(passed)} passed${notMarked === 0 ? '' : `, ${String(notMarked)} not marked`}.</p>
${statistics === undefined ? '' : `<p>Mean ${percentText(statistics.mean)}, median ${percentText(statistics.median)}, quartiles ${percentText(statistics.lowerQuartile)} and ${percentText(statistics.upperQuartile)}.</p>\n${tenthsPicture(statistics.tenths)}`}
${studentTable(report.students)}
${mistakes.length === 0 ? '' : `<h2>Most common mistakes</h2>\n<div class="wide"><table><thead><tr><th scope="col">Mistake</th><th scope="col">Mark</th><th scope="col" class="n">Students</th></tr></thead><tbody>\n${mistakes.map((one) => `<tr><th scope="row">${escaped(one.mistake)}</th><td>${one.category}</td><td class="n">${String(one.students)}</td></tr>`).join('\n')}\n</tbody></table></div>`}
${identical.length === 0 ? '' : `<h2>Plans that say the same</h2>\n<p>Word for word the same. That may have many reasons; look at it.</p>\n<ul>${identical.map((group) => `<li>${escaped(group.join(', '))}</li>`).join('')}</ul>`}
<h2>To each student</h2>
${report.students.map(studentSection).join('\n')}
${report.leftOut.length === 0 ? '' : `<h2>Not marked</h2>\n<ul>${report.leftOut.map((one) => `<li>${escaped(one)}</li>`).join('')}</ul>`}
<p>${escaped(markCautions)}</p>
</main>
</body>
</html>
`;
}

function studentTable(students: readonly StudentReport[]): string {
  const head = [
    ...['Student', 'Result'].map((one) => `<th scope="col">${one}</th>`),
    ...['Points', ...categories].map((one) => `<th scope="col" class="n">${one}</th>`),
  ].join('');
  const rows = students.map(({ marks }) => {
    const own = byCategory(marks);
    const cells = categories.map((category) => {
      const got = own[category];
      return `<td class="n">${got === undefined ? '' : `${pointsText(got.points)} / ${pointsText(got.of)}`}</td>`;
    });
    return `<tr><th scope="row">${escaped(marks.name)}</th><td class="result">${resultOf(marks)}</td><td class="n">${marks.judged ? `${pointsText(marks.points)} / ${pointsText(marks.of)}` : '—'}</td>${cells.join('')}</tr>`;
  });
  return `<div class="wide"><table>\n<caption>Points of each student</caption>\n<thead><tr>${head}</tr></thead>\n<tbody>\n${rows.join('\n')}\n</tbody></table></div>`;
}

function studentSection({ marks, feedback }: StudentReport): string {
  return `<section>\n<h3>${escaped(marks.name)}</h3>\n<p>${resultOf(marks)}${marks.judged ? `, ${pointsText(marks.points)} of ${pointsText(marks.of)} points` : ''}</p>\n<ul>${feedback.map((line) => `<li>${escaped(line)}</li>`).join('')}</ul>\n</section>`;
}

function resultOf({ judged, passed, unsafe }: StudentReport['marks']): string {
  if (!judged) return 'not marked';
  return passed ? 'passed' : unsafe ? 'not passed: not safe' : 'not passed';
}

/** Dark on light, nothing told by colour alone; a page of paper takes it. */
const style = `
body{font:1rem/1.5 system-ui,sans-serif;color:#111;background:#fff;margin:0}
main{max-width:64rem;margin:0 auto;padding:1rem}
table{border-collapse:collapse;margin:1rem 0;width:100%}
caption{text-align:left;font-weight:600}
th,td{border-bottom:1px solid #767676;padding:.25rem .5rem;text-align:left;vertical-align:top;overflow-wrap:break-word}
tbody th{overflow-wrap:anywhere;min-width:8em}
.result{min-width:6.5em}
.n{text-align:right;white-space:nowrap}
thead th:first-letter{text-transform:uppercase}
li,h3,p{overflow-wrap:anywhere}
section{break-inside:avoid}
svg{max-width:100%;height:auto}
.wide{overflow-x:auto}
@page{margin:14mm 12mm 16mm;@bottom-right{content:counter(page) " / " counter(pages);font:9pt sans-serif}}
@media print{
.wide{overflow:visible}
body{font-size:10.5pt}
main{max-width:none;padding:0}
table{font-size:9.5pt}
th,td{padding:.2rem .35rem}
h1,h2,h3,h2+p,caption{break-after:avoid}
h2+p,tr{break-inside:avoid}
thead{display:table-header-group}
tbody tr:first-child{break-before:avoid}
}
`;
