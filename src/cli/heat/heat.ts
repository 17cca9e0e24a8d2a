import { answerHeat } from '../../facts/heat/heat-question.ts';
import type { HeatAnswer } from '../../facts/heat/heat-question.ts';
import type { QuestionContext } from '../../facts/heat/question-plan.ts';
import { answerSeam } from '../../facts/heat/seam-question.ts';
import { isOpen } from '../../facts/heat/exposure-verdict.ts';
import type { HeatBounds } from '../../facts/heat/heat-limits.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../../facts/heat/strip-solver.ts';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { keepOffRule, leastTensileLeft, limitSource } from '../../packs/heat-rules.ts';
import type { Pack } from '../../packs/pack.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import type { Layer, ResolvedPacks } from '../../packs/layers/resolve-packs.ts';
import { heatCsv, plansCsv } from '../../report/heat/heat-csv.ts';
import { heatJson, plansJson } from '../../report/heat/heat-json.ts';
import type { HeatPicture } from '../../report/heat/heat-picture.ts';
import { answerPicture, plannedPicture, seamPicture } from '../../report/heat/heat-pictures.ts';
import { heatPlansText } from '../../report/heat/heat-plans-text.ts';
import type { HeatAnswerReport, SeamAnswerReport } from '../../report/heat/heat-report.ts';
import { heatSvg } from '../../report/heat/heat-svg.ts';
import { heatText } from '../../report/heat/heat-text.ts';
import { seamCsv } from '../../report/heat/seam-csv.ts';
import { seamJson } from '../../report/heat/seam-json.ts';
import { seamText } from '../../report/heat/seam-text.ts';
import type { UsedPack } from '../../report/plan-report.ts';
import { findPlans } from '../plans/find-plans.ts';
import { faultLine, loadGivenPacks } from '../judging/given-packs.ts';
import { readHeatOptions } from './heat-options.ts';
import { heatsOfPlans } from './heat-plans.ts';
import { overwrittenInput, overwrittenSentence } from '../writing/overwritten-input.ts';
import { filesAmong } from '../plans/plan-source.ts';
import { readSeamOptions, strayOptions } from './seam-options.ts';
import type { SeamArguments } from './seam-options.ts';
import { version } from '../version.ts';
import { writeNewFile } from '../writing/write-new-file.ts';
import { writeOut } from '../write-out.ts';
import { complain, refuse } from '../complain.ts';

export interface HeatOptions {
  readonly format: 'text' | 'json' | 'csv';
  readonly rules: readonly string[];
  /** File for the picture. */
  readonly svg?: string;
  readonly force: boolean;
  readonly asOfDay: number;
  readonly colour: boolean;
  readonly columns: number;
}

/**
 * The command `heat`. Without a plan 0 when it is answered, also where no distance keeps the limit, and 2 when the question is
 * wrong or beyond what can be computed. With plans 0 when every neighbour keeps its limits, 1 when one does not or is not
 * known, 2 when a plan cannot be judged.
 */
export function heat(plans: readonly string[], asked: SeamArguments, options: HeatOptions): 0 | 1 | 2 {
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const packs = [...builtInPacks(), ...given.packs];
  const resolved = resolvePacks(packs, undefined);
  if (!resolved.ok) return refuse([faultLine(resolved.sentence, resolved.place)]);
  const contradiction = bothAsked(plans, asked);
  if (contradiction !== undefined) return refuse([contradiction]);
  return plans.length === 0
    ? answerQuestion(asked, {
        packs,
        resolved: resolved.packs,
        options,
        context: {
          limits: resolved.packs.limits,
          practice: resolved.packs.practice,
          solveStrip: rememberingStripSolver(),
          solveLap: rememberingLapSolver(),
        },
      })
    : showPlans(plans, packs, resolved.packs, options);
}

/** What the rules of the packs in force ask beside their limits. */
export function boundsOf(layers: readonly Layer[]): HeatBounds {
  const least = leastTensileLeft(layers);
  return {
    ...(least === undefined ? {} : { leastTensileLeft: least }),
    keepOff: (victim, from) => keepOffRule(layers, victim, from),
  };
}

/** What an answer to a question without a plan needs of the command line. */
interface Asking {
  readonly packs: readonly Pack[];
  readonly resolved: ResolvedPacks;
  readonly options: HeatOptions;
  readonly context: QuestionContext;
}

function answerQuestion(asked: SeamArguments, asking: Asking): 0 | 2 {
  if (asked.method !== undefined) return answerSeamQuestion(asked, asking);
  const stray = strayOptions(asked);
  const reading = readHeatOptions(asked);
  if (stray.length > 0 || !reading.ok) return refuse([...stray, ...(reading.ok ? [] : reading.sentences)]);
  const reply = answerHeat(reading.question, asking.context, boundsOf(asking.resolved.layers));
  if (!reply.ok) return refuse([`This heat cannot be computed: ${reply.reason}`]);
  const { answer } = reply;
  const report: HeatAnswerReport = { ...about(answer, asked, reading.readings, asking), answer };
  return shown(asking, {
    title: `planish heat: ${report.near}`,
    picture: answerPicture(answer),
    forms: {
      json: () => heatJson(report),
      csv: () => heatCsv(report),
      text: () => heatText(report, asking.options),
    },
  });
}

function answerSeamQuestion(asked: SeamArguments, asking: Asking): 0 | 2 {
  const reading = readSeamOptions(asked);
  if (!reading.ok) return refuse(reading.sentences);
  const reply = answerSeam(reading.question, asking.context, boundsOf(asking.resolved.layers));
  if (!reply.ok) return refuse([`This seam cannot be computed: ${reply.reason}`]);
  const { answer } = reply;
  const report: SeamAnswerReport = { ...about(answer, asked, reading.readings, asking), answer };
  return shown(asking, {
    title: `planish heat: ${report.near}`,
    picture: seamPicture(answer),
    forms: {
      json: () => seamJson(report),
      csv: () => seamCsv(report),
      text: () => seamText(report, asking.options),
    },
  });
}

function about(
  { victim, keepOff }: Pick<HeatAnswer, 'victim' | 'keepOff'>,
  asked: SeamArguments,
  readings: readonly string[],
  { packs, resolved: { layers } }: Asking,
): Omit<HeatAnswerReport, 'answer'> {
  const source = limitSource(packs, victim);
  return {
    near: asked.near?.trim() ?? victim,
    readings,
    ...(source === undefined ? {} : { limitSource: source }),
    rulePack: ownerOf(layers, keepOff?.rule),
    packs: usedPacks(layers),
    planish: version,
  };
}

interface Shown {
  readonly title: string;
  readonly picture: HeatPicture;
  readonly forms: Readonly<Record<HeatOptions['format'], () => string>>;
}

/** The picture goes first: where it cannot be written, nothing is said to be answered. */
function shown({ options }: Asking, { title, picture, forms }: Shown): 0 | 2 {
  const fault =
    options.svg === undefined
      ? undefined
      : writeNewFile(options.svg, heatSvg(title, [picture]), options.force);
  if (fault !== undefined) return refuse([`--svg: ${fault}`]);
  writeOut(forms[options.format]());
  return 0;
}

function overPlan(svg: string, args: readonly string[]): string | undefined {
  const input = overwrittenInput([svg], filesAmong(findPlans(args, process.cwd())));
  return input === undefined ? undefined : overwrittenSentence(input);
}

function showPlans(
  args: readonly string[],
  packs: readonly Pack[],
  { layers }: ResolvedPacks,
  options: HeatOptions,
): 0 | 1 | 2 {
  const { plans, complaints } = heatsOfPlans(args, packs, options.asOfDay, boundsOf);
  for (const line of complaints) complain(line);
  const pictures = plans.flatMap(({ file, heats }) =>
    heats
      .filter(({ heat: one }) => one.runs.length > 0 || one.seam !== undefined)
      .map(({ heat: one }) => plannedPicture(one, file)),
  );
  const fault =
    options.svg === undefined
      ? undefined
      : pictures.length === 0
        ? 'these plans hold no heat of which a picture can be drawn.'
        : (overPlan(options.svg, args) ??
          writeNewFile(options.svg, heatSvg('planish heat: heats of plans', pictures), options.force));
  switch (options.format) {
    case 'json':
      writeOut(plansJson(plans, { planish: version, packs: usedPacks(layers) }));
      break;
    case 'csv':
      writeOut(plansCsv(plans));
      break;
    case 'text':
      if (plans.length > 0) writeOut(heatPlansText(plans, options));
  }
  // The report says why a plan has no picture, so it is written first.
  if (fault !== undefined) return refuse([`--svg: ${fault}`]);
  if (plans.length === 0 || plans.some(({ notJudged }) => notJudged.length > 0)) return 2;
  const isAnyOpen = plans.some(({ heats }) =>
    heats.some(
      ({ heat: { open, neighbours } }) =>
        open.length > 0 || neighbours.some(({ verdict }) => isOpen(verdict)),
    ),
  );
  return isAnyOpen ? 1 : 0;
}

function bothAsked(plans: readonly string[], asked: SeamArguments): string | undefined {
  const [plan] = plans;
  const [option] = Object.entries(asked).find(([, value]) => value !== undefined) ?? [];
  if (plan === undefined || option === undefined) return undefined;
  const dashed = option.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);
  return `\`${plan}\` stands beside --${dashed}: name plans, or ask about a heat without one. A value with a blank in it goes in quotes ("600 °C") or loses the blank (600C).`;
}

function ownerOf(layers: readonly Layer[], id: string | undefined): string {
  const owner = layers.find(({ rules }) => rules.some((rule) => rule.id === id)) ?? layers[0];
  return owner === undefined ? '' : `${owner.name} ${owner.version}`;
}

function usedPacks(layers: readonly Layer[]): readonly UsedPack[] {
  return layers.map(({ name, version: packVersion, digest, released }) => ({
    pack: name,
    version: packVersion,
    digest,
    released,
  }));
}
