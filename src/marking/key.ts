import type { Forbidden, KeyCitation, KeyEntry, KeyTopic, Decision } from '../generated/key-types.ts';
import type { PlanStage } from '../facts/context.ts';
import type { AskedName } from './asked-names.ts';

/** The key of an exercise, read and found to agree with itself. Points are plain numbers, shares lie between 0 and 1. */
export interface Key {
  readonly scenario: KeyScenario;
  /** Share of the points from which a plan passes. */
  readonly passShare: number;
  readonly safety?: { readonly points: number; readonly lookAt?: string };
  readonly parts: readonly KeyPart[];
  readonly completeness: readonly KeyEntry[];
  readonly topics: readonly KeyTopic[];
}

export interface KeyScenario {
  readonly id: string;
  readonly title?: string;
  readonly vehicle: {
    readonly maker: string;
    readonly model: string;
    readonly body?: string;
    readonly modelYear?: number;
  };
  /** Days since 1970-01-01. */
  readonly asOfDay?: number;
  readonly stage: PlanStage;
}

export interface KeyPart {
  readonly name: string;
  readonly also: readonly string[];
  readonly kind?: string;
  readonly side?: string;
  readonly truth?: string;
  /** The best first, by points. */
  readonly decisions: readonly Decision[];
  readonly mustNot: readonly Forbidden[];
  readonly citation?: KeyCitation;
  readonly asked: readonly KeyQuestion[];
  readonly why?: string;
  readonly lookAt?: string;
}

/** A number or a word that the plan is asked for. */
export interface KeyQuestion {
  readonly of: AskedName;
  readonly points: number;
  readonly right: RightNumber | RightWords;
  readonly why?: string;
  readonly lookAt?: string;
}

export interface RightNumber {
  /** In the canonical unit of what is asked. */
  readonly value: number;
  /** As the key writes it, for --reveal. */
  readonly text: string;
  /** Farthest distance that is right, in the same unit. */
  readonly within: number;
  readonly nearly?: { readonly within: number; readonly points: number };
}

export interface RightWords {
  readonly words: readonly string[];
}
