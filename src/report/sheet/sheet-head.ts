import type { Stage } from '../../packs/pack.ts';
import type { Verdict } from '../../judge/verdict.ts';
import { severityCounts } from '../count-words.ts';
import { html, nothing, where } from '../html.ts';
import type { Markup } from '../html.ts';
import type { FindingPlaces, NumberedFinding } from './place-findings.ts';
import { anchor, label, sign } from './sheet-finding.ts';
import type { SheetReport } from './sheet-report.ts';

/** What fits a first screen. */
const mostNamed = 8;

const questions: Readonly<Record<Stage, string>> = {
  draft: 'How does the draft stand?',
  start: 'May work begin?',
  release: 'May the vehicle go?',
};

const answers: Readonly<Record<Verdict, string>> = {
  stopped: 'No: something in the plan must not be done.',
  held: 'Not yet: a question is open.',
  cleared: 'Nothing was found against it.',
  'not judged': 'Not known: the plan could not be judged to its end.',
};

/** What stands over the sheet: which job, the answer, and what stops it. */
export function sheetHead({ head, report, shown }: SheetReport, places: FindingPlaces): Markup {
  const { verdict, counts, stage = 'release', file } = report;
  const { number, opened, writtenBy, revision } = shown.job;
  const about = [
    opened === undefined ? undefined : `opened ${opened}`,
    writtenBy === undefined ? undefined : `written by ${writtenBy}`,
    revision === undefined ? undefined : `revision ${revision}`,
    file,
  ].filter((word) => word !== undefined);
  return html`<header>
    <h1>Repair plan${number === undefined ? '' : ` ${number}`}</h1>
    <p class="vehicle">${shown.vehicle === '' ? 'The vehicle is not named.' : shown.vehicle}</p>
    <p class="about">${about.join('; ')}. Judged as of ${head.asOf}, stage ${stage}.</p>
    <section class="answer ${verdict === 'not judged' ? 'unjudged' : verdict}" aria-labelledby="answer">
      <h2 id="answer">
        <span class="asked">${questions[stage]}</span>
        <span class="verdict">${signOf(verdict)} ${verdict.toUpperCase()}</span>
      </h2>
      <p><b>${answers[verdict]}</b> Found: ${severityCounts(counts)}.</p>
      ${where(stage === 'draft', () => html`<p>Judged as a draft: what must be stated before work begins, and before the vehicle goes, was not asked.</p>`)}
      ${whatStops(places, verdict)}
      <p>planish judges the plan as it is written, not the vehicle. It never says that a repair is safe.</p>
    </section>
  </header>`;
}

function signOf(verdict: Verdict): Markup {
  return verdict === 'stopped' ? sign('stop') : verdict === 'cleared' ? nothing : sign('hold');
}

function whatStops({ all }: FindingPlaces, verdict: Verdict): Markup {
  const stops = all.filter(({ finding }) => finding.severity === 'stop');
  const holds = all.filter(({ finding }) => finding.severity === 'hold' && finding.deviation === undefined);
  const open = [...stops, ...holds];
  if (open.length === 0) {
    return verdict === 'not judged'
      ? html`<p><a href="#not-judged">What could not be judged</a></p>`
      : nothing;
  }
  const more = open.length - mostNamed;
  return html`<ol class="stops">
      ${open.slice(0, mostNamed).map(named)}
    </ol>
    ${where(more > 0, () => html`<p>And ${more} more, each beside what it concerns.</p>`)}`;
}

function named(numbered: NumberedFinding): Markup {
  const { partName, part, message, severity } = numbered.finding;
  const name = partName ?? part;
  // Most messages begin with what they are about.
  const lead = name === undefined || message.startsWith(name) ? nothing : html`${name}: `;
  return html`<li>
    <a href="#${anchor(numbered)}">${sign(severity)} ${label(numbered)}</a> ${lead}${message}
  </li>`;
}
