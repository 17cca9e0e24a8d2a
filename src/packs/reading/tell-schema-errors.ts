import { pointerTo } from '../../plan/pointer.ts';
import type { SchemaError } from '../../plan/schema-error.ts';
import type { FaultList } from './fault-list.ts';
import { kindsOf, wordsOf } from './schema-words.ts';

/** Puts what the schema of packs refused into words, each fault once. `valueAt` gives what was written at a pointer. */
export function tellSchemaErrors(
  errors: readonly SchemaError[],
  valueAt: (pointer: string) => unknown,
  list: FaultList,
): void {
  // Of a choice that failed, the branches say each for itself what they lack; only the choice is worth telling.
  const choices = new Set(
    errors.filter(({ keyword }) => keyword === 'anyOf').map(({ instancePath }) => instancePath),
  );
  const told = new Set<string>();
  for (const { keyword, instancePath, params } of errors) {
    if (keyword === 'if') continue;
    if (keyword === 'required' && choices.has(instancePath)) continue;
    const extra = params['additionalProperty'];
    const pointer = typeof extra === 'string' ? pointerTo(instancePath, extra) : instancePath;
    const key = JSON.stringify([pointer, keyword, params['missingProperty']]);
    if (told.has(key)) continue;
    told.add(key);
    switch (keyword) {
      case 'additionalProperties':
        tellUnknownKey(pointer, String(extra), list);
        break;
      case 'required':
        list.at(pointer, `\`${String(params['missingProperty'])}\` is missing here.`, [], true);
        break;
      case 'anyOf':
        list.at(pointer, 'A source names a `standard`, a `document`, or `practice: common`.', [], true);
        break;
      case 'enum': {
        const known = wordsOf(params['allowedValues']);
        const near = list.nearest(String(valueAt(pointer)), known);
        list.at(pointer, `This is not one of the words known here: ${known.join(', ')}.`, near);
        break;
      }
      case 'const':
        list.at(pointer, `Only \`${String(params['allowedValue'])}\` can stand here.`);
        break;
      case 'type':
        list.at(pointer, `Something of another kind is expected here: ${kindsOf(params['type'])}.`);
        break;
      case 'minItems':
      case 'minProperties':
      case 'minLength':
        list.at(
          pointer,
          /\/(?:since|until|version)$/u.test(pointer)
            ? 'A version is three numbers with points, such as 1.0.0.'
            : pointer.endsWith('/digest')
              ? 'A digest is `sha256:` and 64 digits 0-9 and a-f.'
              : 'Something is missing here: too little is written.',
        );
        break;
      case 'maxItems':
      case 'maxProperties':
        list.at(
          pointer,
          `More stands here than a pack ever takes: at most ${String(params['limit'])} entries.`,
        );
        break;
      case 'maxLength':
        list.at(pointer, `This is longer than ${String(params['limit'])} characters.`);
        break;
      case 'uniqueItems':
        list.at(pointer, 'The same word stands twice in this list.');
        break;
      default:
        list.at(pointer, 'This is not of the form that a pack has here.');
    }
  }
}

function tellUnknownKey(pointer: string, key: string, list: FaultList): void {
  if (packKeys.includes(key)) {
    list.at(pointer, `\`${key}\` is a key of a pack, but not one that stands here.`, [], true);
    return;
  }
  list.at(pointer, `\`${key}\` is not a key that a pack has here.`, list.nearest(key, packKeys), true);
}

const packKeys: readonly string[] = [
  ...['pack', 'format', 'facts', 'version', 'released', 'title', 'vehicle', 'rules', 'limits', 'provisions'],
  ...['allowances', 'reaches'],
  ...[
    'id',
    'topic',
    'since',
    'until',
    'replaced_by',
    'judges',
    'severity',
    'from',
    'place',
    'when',
    'unless',
  ],
  ...['message', 'instead', 'why', 'source', 'cases', 'finds', 'passes', 'asks'],
  ...['practice', 'standard', 'clause', 'mark'],
  ...['victim', 'hold_above', 'stop_above', 'time_above', 'temperature', 'at_most', 'at_work', 'note'],
  ...['part', 'sides', 'bodies', 'years', 'document', 'revision', 'published', 'page'],
  ...[
    'layer',
    'markets',
    'vehicle_before',
    'vins',
    'to',
    'releases',
    'lock',
    'packs',
    'date',
    'digest',
    'reasons',
  ],
  ...['parts', 'documents', 'raises', 'superseded_by'],
  ...['grade', 'strength', 'class', 'thickness', 'one_piece', 'under'],
  ...['shall', 'shall_not', 'may', 'conditions', 'maker', 'models', 'min', 'max', 'above', 'below', 'known'],
];
