import { Option } from 'commander';
import type { Command } from 'commander';
import { timesIfUnstated } from '../../facts/heat/heats-of-place.ts';
import { wantsColour } from '../reporting/colour-choice.ts';
import { rulesAsForCheckOption } from '../judging/judging-options.ts';
import { isTerminal } from '../reporting/is-terminal.ts';
import { heat } from './heat.ts';
import type { SeamArguments } from './seam-options.ts';

interface HeatFlags extends SeamArguments {
  readonly format: 'text' | 'json' | 'csv';
  readonly rules: readonly string[];
  readonly svg?: string;
  readonly force: boolean;
}

/** Words and options of `planish heat`. */
export function addHeatCommand(planish: Command, today: () => number): void {
  planish
    .command('heat')
    .description('say how far to stay away from a heat, and what it does beside it; of plans, or without one')
    .argument(
      '[plan...]',
      'plan files, folders, patterns, or - for standard input; without any, a heat is asked about',
    )
    .option('--source <word>', 'what heats: torch, induction, hot air, infra-red panel, oven or other')
    .option('--temperature <quantity>', 'highest temperature, such as 600C, "600 °C" or 1112F')
    .option('--hold <quantity>', 'time of one heating, such as 30s')
    .option('--times <count>', `how many heatings (${String(timesIfUnstated)} when not given)`)
    .option('--measured-by <means>', 'such as "temperature crayon", "contact probe" or none')
    .option('--sheet <quantity>', 'thickness of all heated layers together, such as 1.2mm')
    .option('--metal <class>', 'class or grade of the heated sheet, such as mild or HC340LA')
    .option(
      '--near <what>',
      'class, grade or item beside it: press-hardened, "structural adhesive", airbag …',
    )
    .option('--at <distances>', 'distances to compute, such as 20mm,40mm,80mm')
    .option('--edge <quantity>', 'way to the free end of the sheet, such as 60mm, or "runs on"')
    .option('--shape <word>', 'strip (errs high, the default) or disc')
    .option('--radius <quantity>', 'radius of a heated disc, such as 15mm')
    .option('--cooled-faces <word>', 'both or one: one where a face lies on foam, a pad or a hot sheet')
    .option('--convection <number>', 'W/m²K on each face (8 when not given: still air)')
    .option('--emissivity <number>', '0 to 1 (0.3 when not given: bright zinc)')
    .option('--ambient <quantity>', 'temperature of the shop (20 °C when not given)')
    .option('--sink <word>', 'what takes heat on the way: "wet cloth" or "copper bar"')
    .option('--sink-distance <quantity>', 'from the heated zone to the sink, such as 30mm')
    .option('--sink-width <quantity>', 'how much of the way it covers, such as 20mm')
    .option('--sink-length <quantity>', 'of a wet cloth across the way, such as 300mm')
    .option('--sink-water <quantity>', 'water in a wet cloth, such as 200g')
    .option('--sink-thickness <quantity>', 'of a copper bar, such as 10mm')
    .option('--sink-held <word>', 'a copper bar is clamped or "laid on"')
    .option('--method <word>', 'of a seam: "arc seam", "arc stitch", "TIG seam", "arc braze", "laser seam" …')
    .option('--heat-input <quantity>', 'net heat input of a seam, such as 0.15kJ/mm')
    .option('--voltage <quantity>', 'of the arc, such as 17V')
    .option('--current <quantity>', 'of the arc, such as 90A')
    .option('--power <quantity>', 'of a laser, or the mean power of a pulsed arc, such as 2kW')
    .option('--travel-speed <quantity>', 'such as 8mm/s')
    .option('--passes <count>', 'passes on each other (1 when not given)')
    .option('--interpass <quantity>', 'of the sheet before the next pass, such as 100C')
    .option('--stitch <quantity>', 'length of each stitch, such as 20mm')
    .option('--count <count>', 'number of stitches')
    .option('--pause <quantity>', 'between two stitches, such as 60s')
    .addOption(
      new Option('--format <form>', 'form of the answer').choices(['text', 'json', 'csv']).default('text'),
    )
    .addOption(rulesAsForCheckOption())
    .option('--svg <file>', 'write the picture as SVG')
    .option('--force', 'let --svg replace a file, but no signed plan', false)
    .addHelpText('after', help)
    .exitOverride()
    .action((plans: string[], { format, rules, svg, force, ...asked }: HeatFlags) => {
      process.exitCode = heat(plans, asked, {
        format,
        rules,
        ...(svg === undefined ? {} : { svg }),
        force,
        asOfDay: today(),
        colour: wantsColour(process.env, isTerminal('stdout')),
        columns: 80,
      });
    });
}

const help = `
Exit status: without a plan 0 answered, 2 wrong or beyond what can be computed;
with plans 0 every neighbour keeps its limits, 1 one does not or is not known,
2 a plan could not be judged.

Examples:
  planish heat --source torch --temperature 600C --hold 30s --sheet 1.2mm \\
    --near press-hardened
  planish heat --source induction --temperature 600C --hold 30s --times 1 \\
    --measured-by "contact probe" --sheet 1.2mm --near "structural adhesive" \\
    --at 20mm,40mm
  planish heat --method "arc seam" --voltage 17V --current 90A \\
    --travel-speed 8mm/s --sheet 1.2mm --near "structural adhesive"
  planish heat --svg rail.svg jobs/K-2211.yaml`;
