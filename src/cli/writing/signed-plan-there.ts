import { decodeText } from '../../plan/decode-text.ts';
import { looksSigned } from '../../plan/looks-signed.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { readYaml } from '../../plan/read-yaml.ts';

/**
 * Whether a file is a plan that bears a signature. One that says so and cannot be read as YAML counts as one: what somebody put their
 * name to is not lost by a slip in it. Most files are told by a look at their text, before anything is parsed.
 */
export function isSignedPlan(file: string): boolean {
  const read = readPlanFile(file);
  if (!read.ok) return false;
  const { text } = decodeText(read.bytes);
  if (!/sign|off/iu.test(text) || !/\bparts["']?\s*:/u.test(text)) return false;
  const yaml = readYaml(text);
  return yaml.ok ? looksSigned(yaml.root) : /^["']?sign_?off["']?\s*:/mu.test(text);
}
