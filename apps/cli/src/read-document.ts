import { readFileSync } from 'node:fs';
import { CommandEnd, exitCodes } from './exit-codes.js';

/** Text of a file, or of standard input for "-". Ends the command with a plain message where it cannot be read. */
export function readDocument(path: string): string {
  try {
    return readFileSync(path === '-' ? 0 : path, 'utf8');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const why = code === 'ENOENT' ? 'there is no such file' : (error as Error).message;
    throw new CommandEnd(
      exitCodes.badInput,
      `${path}: ${why}. Name a scenario document, or "-" for standard input.`,
    );
  }
}
