import type { JointSurvey, OperationSurvey, PartSurvey, Survey } from '../survey.ts';
import { partsJoined } from './joint-at-cut.ts';
import { surveyPattern } from './joint-pattern.ts';
import type { PatternSurvey } from './joint-pattern.ts';
import { jointStack } from './joint-stack.ts';
import type { JointStack } from './joint-stack.ts';

type Sheets = readonly (PartSurvey | undefined)[];

/** One joint with what several of its facts are told from, each made when it is first asked for. */
export class JointMatter {
  readonly survey: Survey;
  readonly operation: OperationSurvey;
  readonly one: JointSurvey;
  #stack: Sheets | undefined;
  #laid: JointStack | undefined;
  #pattern: PatternSurvey | undefined;

  constructor(survey: Survey, operation: OperationSurvey, one: JointSurvey) {
    this.survey = survey;
    this.operation = operation;
    this.one = one;
  }

  /** The part itself, those named as sheets, and the other side; undefined for an id that no part bears. */
  get stack(): Sheets {
    return (this.#stack ??= partsJoined(this.survey, this.operation.part, this.one.joint));
  }

  get laid(): JointStack {
    return (this.#laid ??= jointStack(this.survey, this.operation, this.one));
  }

  get pattern(): PatternSurvey {
    return (this.#pattern ??= surveyPattern(this.survey, this.operation, this.one));
  }
}
