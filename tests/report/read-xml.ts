import { SaxesParser } from 'saxes';

export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: XmlElement[];
  text: string;
}

/** Reads XML by a strict parser; throws at the first fault. */
export function readXml(text: string): XmlElement {
  const parser = new SaxesParser();
  const root: XmlElement = { name: '', attributes: {}, children: [], text: '' };
  const open = [root];
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const element: XmlElement = {
      name,
      attributes: attributes,
      children: [],
      text: '',
    };
    open.at(-1)?.children.push(element);
    open.push(element);
  });
  parser.on('text', (given) => {
    const last = open.at(-1);
    if (last !== undefined) last.text += given;
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.write(text).close();
  const [first] = root.children;
  if (first === undefined) throw new Error('no element');
  return first;
}
