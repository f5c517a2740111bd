import { Command, InvalidArgumentError, Option } from 'commander';
import { bench } from './commands/bench.js';
import { check } from './commands/check.js';
import { diff } from './commands/diff.js';
import { explain } from './commands/explain.js';
import { payload } from './commands/payload.js';
import { plan } from './commands/plan.js';
import { project } from './commands/project.js';
import { exitCodes } from './exit-codes.js';

/** Every command with its options and an example; the bodies are in commands/. */
export function commandLine(): Command {
  const program = new Command('drumline')
    .description('Plans the flights that keep fuel drums above the minimum at remote strips and pads.')
    .addHelpText('after', exitCodeHelp)
    .showHelpAfterError('(drumline --help lists the commands)')
    .exitOverride((end) => {
      process.exit(end.exitCode === 0 ? exitCodes.done : exitCodes.usage);
    });

  const command = (name: string, words: string, example: string) =>
    program
      .command(name)
      .description(words)
      .addHelpText('after', `\nExample:\n  ${example}`)
      .option('--json', 'write JSON for machines instead of tables')
      .copyInheritedSettings(program);

  const onScenario: typeof command = (...words) =>
    command(...words)
      .option(
        '--with <changes>',
        'lay a file of changes over the scenario; may be given several times',
        collect,
      )
      .option(
        '--standing <plan>',
        'the flights of this plan stand: departed ones are facts, offered ones may move',
      );

  onScenario(
    'plan <scenario>',
    'Plan a week and a fortnight of positioning flights, with the reason for each.',
    'drumline plan seeds/hollowtarn.json --seconds 15 --out plan.json',
  )
    .option('--seconds <n>', 'time to look for a better plan', wholeNumber, 12)
    .option(
      '--iterations <n>',
      'look this many times instead of for a time: the same plan every time',
      wholeNumber,
    )
    .option('--seed <n>', 'start of the random numbers', wholeNumber, 1)
    .addOption(
      new Option('--end <target>', 'what the caches hold at the end')
        .choices(['both', 'hand-plan', 'minimum', 'operator'])
        .default('both', 'the default target, and the minimum beside it'),
    )
    .option('--out <file>', 'also write the plan as JSON to a file, whole or not at all')
    .action(plan);

  onScenario(
    'project <scenario>',
    'Project the stock of every cache by day, without and with the flights that already stand.',
    'drumline project seeds/hollowtarn.json',
  ).action(project);

  onScenario(
    'payload <scenario>',
    'Drums, binding limit and leave-or-stay of every base, strip and type, dry and soft.',
    'drumline payload seeds/hollowtarn.json',
  ).action(payload);

  onScenario(
    'check <scenario> [plan]',
    "Check a plan, or the scenario's own hand plan and standing flights, against every rule.",
    'drumline check seeds/hollowtarn.json plan.json',
  ).action(check);

  onScenario(
    'explain <scenario> <plan> [flight]',
    'Why a flight flies, or why another one does not.',
    'drumline explain seeds/hollowtarn.json plan.json --why-not "C1 XLOR 2027-06-15"',
  )
    .option('--why-not <flight>', 'aircraft, strips and date of a flight that is not in the plan')
    .action(explain);

  command(
    'diff <before> <after>',
    'Compare two plans: removed, added, moved, drums changed, same.',
    'drumline diff monday.json tuesday.json',
  ).action(diff);

  command(
    'bench <folder>',
    'Solve the networks of a folder, or a published set of inventory-routing instances; print plan, bound and gap.',
    'drumline bench ../networks --seconds 30',
  )
    .option('--seconds <n>', 'time for each network', wholeNumber, 30)
    .option('--only <names>', 'names of networks or instances, parted by commas')
    .option(
      '--make <n>',
      'first write this many invented networks into the folder, numbered from the seed on',
      wholeNumber,
    )
    .option('--lps', 'solve small linear programs of each network with both engines instead')
    .option('--full', 'of a published set all instances, not the 30 of the default')
    .option('--seed <n>', 'start of the random numbers', wholeNumber, 1)
    .action(bench);

  return program;
}

const collect = (path: string, before: readonly string[] = []): readonly string[] => [...before, path];

function wholeNumber(text: string): number {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 0) throw new InvalidArgumentError('Give a whole number.');
  return value;
}

const exitCodeHelp = `
A file named "-" is standard input.

Exit codes:
  ${exitCodes.done}    done
  ${exitCodes.faults}    check found faults, or no plan is possible
  ${exitCodes.usage}    the command line was not understood
  ${exitCodes.badInput}    a document could not be read or has faults
  ${exitCodes.defect}   a defect in the program
  ${exitCodes.interrupted}  stopped by Ctrl-C; the best plan so far was written`;
