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
  stopped: 'something in the plan must not be done.',
  held: 'a question is open.',
  cleared: 'nothing was found against it.',
  'not judged': 'the plan could not be judged to its end.',
};

const shortAnswers: Readonly<Record<Verdict, string>> = {
  stopped: 'No',
  held: 'Not yet',
  cleared: 'Cleared',
  'not judged': 'Not known',
};

/** How a draft stands is no question of yes or no. */
function answerWords(verdict: Verdict, stage: Stage): string {
  const short = stage === 'draft' ? 'As a draft' : shortAnswers[verdict];
  return `${short}: ${answers[verdict]}`;
}

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
    <p class="about">
      ${about.join('; ')}. Judged as of ${head.asOf}, stage ${stage}; what is changed in the plan after that
      is not on this sheet.
    </p>
    <section class="answer ${verdict === 'not judged' ? 'unjudged' : verdict}" aria-labelledby="answer">
      <h2 id="answer">
        <span class="asked">${questions[stage]}</span>
        <span class="verdict">${signOf(verdict)} ${verdict.toUpperCase()}</span>
      </h2>
      <p><b>${answerWords(verdict, stage)}</b> Found: ${severityCounts(counts)}.</p>
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
  const more = open.length - mostNamed;
  return html`${where(verdict === 'not judged', () => html`<p><a href="#not-judged">What could not be judged</a></p>`)}
  ${where(
    open.length > 0,
    () =>
      html`<ol class="stops">
        ${open.slice(0, mostNamed).map(named)}
      </ol>`,
  )}
  ${where(more > 0, () => html`<p>And ${more} more, each beside what it concerns.</p>`)}`;
}

function named(numbered: NumberedFinding): Markup {
  const { partName, part, message, severity } = numbered.finding;
  const name = partName ?? part;
  // Most messages name what they are about.
  const lead = name === undefined || message.includes(name) ? nothing : html`${name}: `;
  return html`<li>
    ${sign(severity)} <a href="#${anchor(numbered)}">${label(numbered)}</a> ${lead}${message}
  </li>`;
}
