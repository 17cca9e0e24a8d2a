import type { SignatureShown } from '../../facts/papers/signature-shown.ts';
import { html, nothing, where } from '../html.ts';
import type { Markup } from '../html.ts';
import { isYes, textOf } from './sheet-facts.ts';

/** What the signature in the plan covers, and whether plan and rule packs still are what was signed. */
export function signatureState({ planDigest, planish, packs, facts }: SignatureShown): Markup {
  if (planDigest === undefined && packs.length === 0)
    return html`<p>The signature bears no digest: whether the plan was changed after it does not show.</p>`;
  const digests = [
    ...(planDigest === undefined ? [] : [{ name: 'The plan as signed', digest: planDigest }]),
    ...packs.map(({ name, digest }) => ({ name: `Pack ${name}`, digest: digest ?? 'no digest' })),
  ];
  return html`<p>${planWords(facts)} ${packWords(facts, packs.length)}</p>
    <ul class="digests">
      ${digests.map(({ name, digest }) => html`<li>${name}: <code>${digest}</code></li>`)}
    </ul>
    <p>
      <small
        >A digest shows that something was changed, never who
        signed.${where(planish !== undefined, () => html` Signed with planish ${planish ?? ''}.`)}</small
      >
    </p>`;
}

function planWords(facts: SignatureShown['facts']): Markup {
  const isEdited = isYes(facts, 'sign-off.edited');
  if (isEdited === undefined) return html`Whether the plan was changed after it was signed does not show.`;
  return isEdited
    ? html`<b>The plan was changed after it was signed.</b>`
    : html`The plan is as it was signed: its digest agrees.`;
}

function packWords(facts: SignatureShown['facts'], count: number): Markup {
  if (count === 0) return html`It does not say by which rule packs.`;
  const [changed, missing] = ['sign-off.packs_changed', 'sign-off.packs_missing'].map((name) =>
    textOf(facts, name),
  );
  if (changed === undefined && missing === undefined) return html`The rule packs are those of the signature.`;
  return html`${missing === undefined ? nothing : html`<b>Rule packs that it was signed by and that are not here: ${missing}.</b>`}
  ${changed === undefined ? nothing : html`Other rule packs than when it was signed: ${changed}.`}`;
}
