import { closeSync, fsyncSync, openSync, renameSync, unlinkSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Writes a file as a whole or not at all: a killed process leaves the old file or the new one, never a half. */
export function writeWhole(path: string, text: string): void {
  const draft = join(dirname(path), `.${process.pid}.${path.split('/').pop()}.draft`);
  try {
    const file = openSync(draft, 'wx');
    try {
      writeSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(draft, path);
  } catch (error) {
    try {
      unlinkSync(draft);
    } catch {
      // the draft was never made, or is already in place
    }
    throw error;
  }
}
