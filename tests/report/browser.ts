import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

/** Debian's browser; undefined where it is not installed. Nothing is asked of the network. */
export const browser = ['/usr/bin/chromium', process.env['PLANISH_CHROMIUM']].find(
  (file) => file !== undefined && existsSync(file),
);

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export interface AxeAnswer {
  /** Rule and element, one a violation. */
  readonly violations: readonly string[];
  /** Rules that a person has to look at. */
  readonly unsure: readonly string[];
  readonly passed: number;
}

/**
 * What axe-core says of a page in a real browser. The page's policy lets no script run, so that of the copy that is looked at is taken
 * out, which changes nothing of what is shown.
 */
export function axeOn(page: string): AxeAnswer {
  const script = `<script>${axe}</script><script>
axe.run(document, { resultTypes: ['violations', 'incomplete'] }).then((found) => {
  const told = (list) => list.flatMap((one) => one.nodes.map((node) => one.id + ': ' + node.html.slice(0, 200)));
  const answer = { violations: told(found.violations), unsure: told(found.incomplete), passed: found.passes.length };
  document.documentElement.setAttribute('data-axe', encodeURIComponent(JSON.stringify(answer)));
});
</script></body>`;
  const shown = rendered(
    page.replace(/<meta[^>]*Content-Security-Policy[^>]*>/u, '').replace('</body>', () => script),
  );
  const [, answer] = /data-axe="([^"]*)"/u.exec(shown) ?? [];
  if (answer === undefined) throw new Error('axe gave no answer');
  return JSON.parse(decodeURIComponent(answer)) as AxeAnswer;
}

/** The document as the browser has it after everything ran that would run. */
export function rendered(page: string): string {
  if (browser === undefined) throw new Error('no browser');
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-browser-'));
  try {
    const file = path.join(folder, 'page.html');
    writeFileSync(file, page);
    const flags = ['--headless', '--no-sandbox', '--disable-gpu', '--window-size=1100,1400'];
    return execFileSync(
      browser,
      [
        ...flags,
        `--user-data-dir=${folder}`,
        '--virtual-time-budget=600000',
        '--dump-dom',
        pathToFileURL(file).href,
      ],
      {
        encoding: 'utf8',
        maxBuffer: 256 * 1024 * 1024,
        stdio: ['ignore', 'pipe', 'ignore'],
        timeout: 300_000,
      },
    );
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
