import { isMap, isSeq, parseDocument } from 'yaml';
import { judgeText } from './judge-text.ts';

type Path = readonly (string | number)[];

/** Every key and every entry of a plan, of those that are meant, that can be left out without the plan being held, its indices as `*`, each once. */
export function silentPaths(text: string, isMeant: (path: Path) => boolean): readonly string[] {
  const paths: Path[] = [];
  const walk = (node: unknown, path: Path): void => {
    if (isMap(node)) {
      for (const { key, value } of node.items) {
        const inner = [...path, String(key)];
        paths.push(inner);
        walk(value, inner);
      }
    }
    if (isSeq(node)) {
      node.items.forEach((item, index) => {
        paths.push([...path, index]);
        walk(item, [...path, index]);
      });
    }
  };
  walk(parseDocument(text).contents, []);
  const silent = paths.filter(isMeant).filter((path) => judgeText(without(text, path)).verdict === 'cleared');
  return [
    ...new Set(silent.map((path) => path.map((step) => (typeof step === 'number' ? '*' : step)).join('.'))),
  ].sort();
}

function without(text: string, path: Path): string {
  const document = parseDocument(text);
  document.deleteIn(path);
  return document.toString({ lineWidth: 0 });
}
