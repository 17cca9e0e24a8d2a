import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { defaultTreeAdapter, parse } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';

type Element = DefaultTreeAdapterTypes.Element;

/** A page as the algorithm of the HTML standard reads it. */
export interface ReadPage {
  /** Codes of the standard’s parse errors. */
  readonly errors: readonly string[];
  readonly elements: readonly ReadElement[];
}

export interface ReadElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** All text in it, blanks run together. */
  readonly text: string;
}

export function readPage(page: string): ReadPage {
  const errors: string[] = [];
  const document = parse(page, { onParseError: ({ code }) => void errors.push(code) });
  const elements: ReadElement[] = [];
  const walk = (node: DefaultTreeAdapterTypes.ParentNode): void => {
    for (const child of node.childNodes) {
      if (!defaultTreeAdapter.isElementNode(child)) continue;
      elements.push(elementOf(child));
      walk(child);
    }
  };
  walk(document);
  return { errors, elements };
}

function elementOf(element: Element): ReadElement {
  return {
    name: element.tagName,
    attributes: Object.fromEntries(element.attrs.map(({ name, value }) => [name, value])),
    get text() {
      return textOf(element).replaceAll(/\s+/gu, ' ').trim();
    },
  };
}

function textOf(node: DefaultTreeAdapterTypes.ParentNode): string {
  return node.childNodes
    .map((child) => {
      if (defaultTreeAdapter.isTextNode(child)) return child.value;
      return defaultTreeAdapter.isElementNode(child) ? textOf(child) : '';
    })
    .join('');
}

const checker = new HtmlValidate(
  new StaticConfigLoader({ root: true, extends: ['html-validate:standard', 'html-validate:a11y'] }),
);

/** What the conformance checker has against a page, by the W3C’s rules and those of access; nothing when it conforms. */
export async function conformance(page: string): Promise<readonly string[]> {
  const { results } = await checker.validateString(page);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${String(line)} ${ruleId}: ${message}`),
  );
}
