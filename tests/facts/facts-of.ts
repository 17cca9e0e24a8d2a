import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { resolvePacks } from '../../src/packs/layers/resolve-packs.ts';
import type {
  DerivationContext,
  HeatLimit,
  HeatPractice,
  MakerPart,
  MakerStatement,
  PlanStage,
  SupersededDocument,
} from '../../src/facts/context.ts';
import type { FoundSoFar, PermitInForce } from '../../src/facts/afterwards.ts';
import { deriveFacts } from '../../src/facts/derive-facts.ts';
import type { Fact, FactValue } from '../../src/facts/fact.ts';
import type { FactSheet, SheetKind } from '../../src/facts/sheet.ts';
import { lookUp } from '../../src/facts/sheet.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../../src/facts/heat/strip-solver.ts';
import { surveyPlan } from '../../src/facts/survey-plan.ts';
import type { Survey } from '../../src/facts/survey.ts';
import type { Plan } from '../../src/generated/plan-types.ts';
import { checkPlan } from '../../src/plan/check-plan.ts';
import type { EntryFault } from '../../src/plan/entry-fault.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { readDate } from '../../src/quantity/iso-date.ts';

export interface Deriving {
  /** 2026-10-21 when not given. */
  readonly asOf?: string;
  readonly stage?: PlanStage;
  readonly limits?: ReadonlyMap<string, HeatLimit>;
  readonly tolerances?: DerivationContext['tolerances'];
  /** Those of the newest general pack where left out. */
  readonly triggers?: DerivationContext['triggers'];
  /** Statements of a pack `corvane-tarn 1.0.0` for Corvane Tarn. */
  readonly statements?: readonly MakerStatement[];
  /** What the maker says parts are, and which documents were replaced, of the same pack. */
  readonly parts?: readonly MakerPart[];
  readonly documents?: readonly SupersededDocument[];
  readonly ruleStanding?: DerivationContext['ruleStanding'];
  readonly found?: readonly FoundSoFar[];
  readonly leastTensileLeft?: number;
  readonly solveStrip?: DerivationContext['solveStrip'];
}

export interface Derived {
  readonly sheets: readonly FactSheet[];
  readonly permits: readonly PermitInForce[];
  readonly all: (kind: SheetKind) => readonly FactSheet[];
  readonly fact: (name: string, at?: string) => Fact;
  /** The value of a known fact; the reason of one that is not, after a question mark. */
  readonly value: (name: string, at?: string) => FactValue;
}

/** Limits of its own, so that no pack of the checkout decides what these tests expect. */
const limits: ReadonlyMap<string, HeatLimit> = new Map([
  ['hardened or multi-phase steel', { holdAboveCelsius: 200, stopAboveCelsius: 250 }],
  ['structural adhesive', { holdAboveCelsius: 80, stopAboveCelsius: 120 }],
  [
    'traction battery',
    { holdAboveCelsius: 60, stopAboveCelsius: 60, timeAbove: { celsius: 45, atMostSeconds: 2700 } },
  ],
]);

/** As the general pack has it on the day of writing; a test of its own says what a pack may change. */
const practice: HeatPractice = {
  allowanceKelvin: new Map([
    ['temperature crayon', 20],
    ['contact probe', 20],
    ['infra-red on a prepared spot', 30],
    ['none', 30],
  ]),
  reachMm: new Map([['resistance spot', 25]]),
};

/** One window, likewise: zinc-coated sheet from 1.0 to 1.6 mm. */
const windows: DerivationContext['windows'] = [
  [
    {
      coat: 'zinc',
      overMm: 1,
      upToMm: 1.6,
      force: { min: 3, max: 4 },
      current: { min: 10, max: 14 },
      time: { min: 0.2, max: 0.3 },
      tipMm: 6,
    },
  ],
];

/** As common practice has them. */
const tolerances: NonNullable<DerivationContext['tolerances']> = new Map([
  ['point', 3],
  ['opening', 3],
] as const);

const general = resolvePacks(builtInPacks(), undefined);
const triggers = general.ok ? general.packs.triggers : [];
const orders = general.ok ? general.packs.orders : [];

const solveStrip = rememberingStripSolver();
const solveLap = rememberingLapSolver();

/** The sheets of a plan; `format: 1`, `vehicle: {}` and `parts: []` are added where the text leaves them out. */
export function factsOf(text: string, given: Deriving = {}): Derived {
  const { plan, faults } = planOf(text);
  const derived = deriveFacts(plan, faults, contextOf(plan, given));
  const afterwards = derived.afterwards(given.found ?? []);
  const sheets = [...derived.sheets, ...afterwards.sheets];
  const fact = (name: string, at?: string): Fact => {
    const kind = name.split('.')[0]?.replace('provision', 'operation');
    const sheet = sheets.find((one) => one.kind === kind && (at === undefined || one.at === at));
    const found = sheet === undefined ? undefined : lookUp(sheet, name);
    if (found === undefined) throw new Error(`no ${name} on a sheet at ${at ?? 'any place'}`);
    return found;
  };
  return {
    sheets,
    permits: afterwards.permits,
    all: (kind) => sheets.filter((sheet) => sheet.kind === kind),
    fact,
    value: (name, at) => {
      const found = fact(name, at);
      return found.known ? found.value : `? ${found.reason}`;
    },
  };
}

export function surveyOf(text: string, given: Deriving = {}): Survey {
  const { plan } = planOf(text);
  return surveyPlan(plan, contextOf(plan, given));
}

function planOf(text: string): { readonly plan: Plan; readonly faults: readonly EntryFault[] } {
  const missing = ['format: 1', 'vehicle: {}', 'parts: []'].filter(
    (line) => !new RegExp(`^${line.split(':')[0] ?? ''}:`, 'mu').test(text),
  );
  const yaml = readYaml([...missing, text].join('\n'));
  if (!yaml.ok) throw new Error(yaml.faults.map(({ sentence }) => sentence).join('\n'));
  const checked = checkPlan(yaml.root);
  if (!checked.ok) throw new Error(checked.faults.map(({ sentence }) => sentence).join('\n'));
  return checked;
}

function contextOf(plan: Plan, given: Deriving): DerivationContext {
  const asOf = readDate(given.asOf ?? '2026-10-21');
  if (!asOf.ok) throw new Error(asOf.reason);
  return {
    asOfDay: asOf.day,
    stage: given.stage ?? plan.stage ?? 'release',
    limits: given.limits ?? limits,
    windows,
    tolerances: given.tolerances ?? tolerances,
    triggers: given.triggers ?? triggers,
    orders,
    makers:
      given.statements === undefined && given.parts === undefined && given.documents === undefined
        ? []
        : [
            {
              pack: 'corvane-tarn 1.0.0',
              maker: 'Corvane',
              models: ['Tarn'],
              statements: given.statements ?? [],
              parts: given.parts ?? [],
              documents: given.documents ?? [],
            },
          ],
    ...(given.ruleStanding === undefined ? {} : { ruleStanding: given.ruleStanding }),
    practice,
    ...(given.leastTensileLeft === undefined ? {} : { leastTensileLeft: given.leastTensileLeft }),
    signed: {
      planDigest: 'sha256:1',
      packs: [{ pack: 'general', version: '2.0.0', digest: 'sha256:1' }],
    },
    solveStrip: given.solveStrip ?? solveStrip,
    solveLap,
  };
}

/** A vehicle and a reference of its maker that covers it. */
export const tarn = `
vehicle: { maker: Corvane, model: Tarn, body: wagon, model_year: 2021 }
references:
  - id: own
    kind: maker procedure
    document: BRM-1
    revision: D
    published: 2021-02-01
    covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2020-2022 }
    looked_up: 2026-10-06
  - id: old
    kind: maker procedure
    document: BRM-0
    revision: A
    covers: { maker: Corvane, model: Tarn, bodies: [wagon], years: 2015-2019 }
    looked_up: 2026-10-06
  - { id: course, kind: training, title: A course }
`;
