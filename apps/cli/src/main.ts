import { commandLine } from './command-line.js';
import { CommandEnd, exitCodes } from './exit-codes.js';

// A closed pipe (`drumline plan ... | head`) is no defect.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(exitCodes.done);
  throw error;
});

try {
  await commandLine().parseAsync();
} catch (error) {
  if (!(error instanceof CommandEnd)) throw error;
  if (error.message !== '') process.stderr.write(`${error.message}\n`);
  process.exitCode = error.exitCode;
}
