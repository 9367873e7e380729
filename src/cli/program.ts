/** All commands, their words and options. What a command does is fetched when it runs. */
import { Command, CommanderError, InvalidArgumentError } from 'commander';
import { startCommand } from '../server/start-command.ts';
import type { FormulateOptions } from './advised.ts';
import { backupCommand, restoreCommand } from './backup.ts';
import { householdCommand } from './households.ts';
import { BAD_INPUT, complain, oneLine } from './print.ts';
import '../words/plain-english.ts';

const TEACHING = `
Examples:
  $ npx pouchful start                        the screens, at http://localhost:4173
  $ npx pouchful start --lan                  the same, also for phones of the home network, once paired
  $ npx pouchful foods search sunflower       find a food and its reference number
  $ npx pouchful foods show sr28:12036 --per 15   what 15 g of it hold
  $ npx pouchful targets list                 what the animal needs, by profile
  $ npx pouchful demo > problem.json          a problem to start from
  $ npx pouchful formulate problem.json --pretty  the nearest mix that keeps every rule
  $ npx pouchful demo | npx pouchful formulate -  the same through a pipe

Exit codes: 0 done (a mix was found), 2 wrong input, 3 no mix can keep the rules.

Caution: this is arithmetic, not veterinary advice. A home mix never replaces a complete food:
feed it beside a complete pellet, bring in new foods one at a time, and see a vet when an animal
loses weight or stops eating.`;

/** The commands. @param exit takes the exit code of the command that ran */
function program(exit: (code: number) => void): Command {
  const pouchful = new Command('pouchful')
    .description("Mix a hamster's dry food at home from real figures: foods, targets, ration, grams.")
    .addHelpText('after', TEACHING)
    .showHelpAfterError(false);

  pouchful
    .command('formulate')
    .description('find the mix nearest to the wanted shares that keeps every rule; prints JSON')
    .argument('<file>', 'problem.json, or - for standard input')
    .option('--pretty', 'print a table for people instead of JSON')
    .option('--why', 'say which bounds the mix stands at and what each costs')
    .option('--swaps', "say what can take each food's place, and what comes of one being left")
    .addHelpText(
      'after',
      '\nExits 0 when a mix was found, 3 when no mix can keep the rules, 2 on wrong input.',
    )
    .action(async (file: string, opts: FormulateOptions) => {
      const { formulate } = await import('./formulate.ts');
      exit(await formulate(file, opts));
    });

  const foods = pouchful.command('foods').description('the reference foods: find them, read their figures');
  foods
    .command('search')
    .description('find foods by plain words; a slip of spelling is forgiven')
    .argument('<words...>', 'such as: pumpkin seed')
    .option('--limit <n>', 'how many at most', whole, 10)
    .option('--json', 'print JSON')
    .action(async (words: string[], opts: { limit: number; json?: boolean }) => {
      const { searchFoods } = await import('./search-foods.ts');
      exit(searchFoods(words.join(' '), opts));
    });
  foods
    .command('show')
    .description('every figure known of a food, and by name those that are unknown')
    .argument('<ref>', 'reference number, such as sr28:20038')
    .option('--per <grams>', 'amounts in this many grams', grams, 100)
    .option('--json', 'print JSON')
    .action(async (ref: string, opts: { per: number; json?: boolean }) => {
      const { showFood } = await import('./show-food.ts');
      exit(showFood(ref, opts));
    });

  const targets = pouchful
    .command('targets')
    .description('target profiles: what the animal needs, with sources');
  targets
    .command('list')
    .description('the profiles that come with Pouchful')
    .action(async () => {
      const { listTargets } = await import('./targets.ts');
      exit(listTargets());
    });
  targets
    .command('show')
    .description('the bounds of a profile and where each comes from')
    .argument('<id>', 'such as hamster-adult')
    .action(async (id: string) => {
      const { showTarget } = await import('./targets.ts');
      exit(showTarget(id));
    });

  pouchful
    .command('demo')
    .description('print the problem of an invented mix, ready for formulate')
    .option('--solve', 'solve it and print the table for people')
    .action(async (opts: { solve?: boolean }) => {
      const { demo } = await import('./demo.ts');
      exit(await demo(opts));
    });

  pouchful.addCommand(
    startCommand(async (options) => {
      const { serveUntilStopped } = await import('../server/main.ts');
      await serveUntilStopped(options);
      exit(0);
    }),
  );

  pouchful.addCommand(householdCommand(exit));
  pouchful.addCommand(backupCommand(exit));
  pouchful.addCommand(restoreCommand(exit));

  overrideExits(pouchful);
  return pouchful;
}

/**
 * Runs a command.
 * @param args the words after the program's name
 * @returns the exit code; errors have been said on stderr, in one line
 */
export async function runProgram(args: readonly string[]): Promise<number> {
  let code = 0;
  try {
    await program((c) => {
      code = c;
    }).parseAsync(args.length === 0 ? ['--help'] : args, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : BAD_INPUT;
    return complain(error);
  }
}

/** Commander says its own errors in one line and throws instead of ending the process. */
function overrideExits(command: Command): void {
  command.exitOverride();
  command.configureOutput({
    outputError: (text, write) => write(`pouchful: ${oneLine(text.replace(/^error: /, ''))}\n`),
  });
  for (const child of command.commands) overrideExits(child);
}

function whole(text: string): number {
  const value = Number(text);
  if (Number.isInteger(value) && value > 0) return value;
  throw new InvalidArgumentError('Give a whole number above 0.');
}

function grams(text: string): number {
  const value = Number(text);
  if (Number.isFinite(value) && value > 0 && text.trim() !== '') return value;
  throw new InvalidArgumentError('Give grams as a number above 0.');
}
