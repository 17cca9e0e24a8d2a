import type { FaultList } from '../packs/reading/fault-list.ts';
import { pointerTo } from '../plan/pointer.ts';
import type { SchemaError } from '../plan/schema-error.ts';
import { kindsOf, wordsOf } from '../packs/reading/schema-words.ts';

/** Puts what the schema of keys refused into words, each place once. `valueAt` gives what was written at a pointer. */
export function tellKeyErrors(
  errors: readonly SchemaError[],
  valueAt: (pointer: string) => unknown,
  list: FaultList,
): void {
  const told = new Set<string>();
  for (const { keyword, instancePath, params } of errors) {
    const extra = params['additionalProperty'];
    const pointer = typeof extra === 'string' ? pointerTo(instancePath, extra) : instancePath;
    const missing = params['missingProperty'];
    const once = `${pointer} ${String(missing)}`;
    if (told.has(once)) continue;
    told.add(once);
    switch (keyword) {
      case 'additionalProperties':
        list.at(
          pointer,
          `\`${String(extra)}\` is not a word that a key has here.`,
          // A word of another place in the key is no nearer for being itself.
          list.nearest(String(extra), keyWords).filter((word) => word !== extra),
          true,
        );
        break;
      case 'required':
        list.at(pointer, `\`${String(missing)}\` is missing here.`, [], true);
        break;
      case 'enum': {
        const known = wordsOf(params['allowedValues']);
        const near = list.nearest(String(valueAt(pointer)), known);
        list.at(pointer, `This is not one of the words known here: ${known.join(', ')}.`, near);
        break;
      }
      case 'const':
        list.at(pointer, 'This planish reads keys of `format: 1`.');
        break;
      case 'type':
        list.at(pointer, `Something of another kind is expected here: ${kindsOf(params['type'])}.`);
        break;
      case 'exclusiveMinimum':
      case 'maximum':
        list.at(pointer, 'Points lie above 0 and go up to 1000; a year from 1980 to 2100.');
        break;
      case 'minItems':
      case 'minLength':
        list.at(pointer, 'Nothing is written here; take the key out, or say what is meant.');
        break;
      default:
        list.at(pointer, 'Too little or too much is written here.');
    }
  }
}

/** Words that a key is written with, for the nearest to one that it does not have. */
const keyWords: readonly string[] = [
  ...['format', 'scenario', 'pass', 'safety', 'parts', 'completeness', 'topics', 'id', 'title', 'told'],
  ...[
    'vehicle',
    'maker',
    'model',
    'body',
    'model_year',
    'as_of',
    'stage',
    'points',
    'look_at',
    'name',
    'also',
  ],
  ...[
    'kind',
    'side',
    'truth',
    'decisions',
    'must_not',
    'citation',
    'asked',
    'why',
    'do',
    'extent',
    'because',
  ],
  ...['documents', 'revision', 'at', 'without_revision', 'without_place', 'of', 'value', 'within', 'nearly'],
  ...['accept', 'entry', 'called', 'topic', 'each'],
];
