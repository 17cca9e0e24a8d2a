import { Markup, html } from '../html.ts';
import { pagePolicy } from '../page-policy.ts';
import { placeFindings } from './place-findings.ts';
import { sheetDoubts, sheetFoot, sheetSignOff, sheetSteps } from './sheet-end.ts';
import { sheetHead } from './sheet-head.ts';
import { sheetMeasuring } from './sheet-measuring.ts';
import { sheetParts } from './sheet-parts.ts';
import type { SheetReport } from './sheet-report.ts';
import { sheetStyle } from './sheet-style.ts';
import { sheetVehicle } from './sheet-vehicle.ts';

/**
 * The sheet of one plan: a page of HTML that needs nothing else and can do nothing: no script runs in it, nothing is fetched, and no
 * style but its own counts.
 */
export function sheetHtml(report: SheetReport): string {
  const places = placeFindings(report.report.findings, report.shown.parts);
  const { number } = report.shown.job;
  const title = `Repair plan${number === undefined ? '' : ` ${number}`}: ${report.report.verdict}`;
  const policy = pagePolicy(sheetStyle);
  // Whole, since the policy counts every blank of it.
  const style = new Markup(`<style>${sheetStyle}</style>`);
  const page = html`<!DOCTYPE html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${policy}" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        ${style}
      </head>
      <body>
        ${sheetHead(report, places)}
        <nav aria-label="On this sheet">
          <a href="#vehicle">Vehicle</a>, <a href="#documents">documents</a>, <a href="#parts">parts</a>,
          <a href="#measuring">measured points</a>, <a href="#steps">steps</a>,
          <a href="#not-judged">what could not be judged</a>, <a href="#assumed">what was assumed</a>,
          <a href="#sign-off">sign-off</a>
        </nav>
        <main>
          ${sheetVehicle(report, places)} ${sheetParts(report, places)} ${sheetMeasuring(report, places)}
          ${sheetSteps(report, places)} ${sheetDoubts(report, places)} ${sheetSignOff(report, places)}
        </main>
        ${sheetFoot(report)}
      </body>
    </html> `;
  return page.source;
}
