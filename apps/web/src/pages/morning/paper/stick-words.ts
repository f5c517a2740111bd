import { readDips } from '../../../counting/dips.js';
import { litresIn } from './find.js';
import { missing, type Sheet } from './sheet.js';

export const litresOf = (word: string | undefined): number =>
  litresIn(word ?? '') ?? missing('How many litres? Write 200 L after it.');

interface ByStick {
  readonly litres: number;
  readonly drums: number;
  /** ", 34 cm in an upright drum": as it is read back. */
  readonly by: string;
}

/** "left 80 L", or "left 34 cm" by the stick. Null: it does not say. */
export const leftIn = (words: readonly string[], sheet: Sheet): Omit<ByStick, 'drums'> | null => {
  const said = after(words, 'left');
  if (said === undefined) return null;
  const next = words[words.indexOf(said) + 1]?.toLowerCase();
  if (!/cm$/i.test(said) && next !== 'cm') return { litres: litresOf(said), by: '' };
  return byStick(said, words, sheet);
};

/** The figures after "stick", up to "cm". Null: no stick was read. */
export const sticksIn = (words: readonly string[], sheet: Sheet): ByStick | null => {
  const at = words.findIndex((word) => word.toLowerCase() === 'stick');
  if (at < 0) return null;
  const rest = words.slice(at + 1);
  const end = rest.findIndex((word) => /cm$/i.test(word));
  if (end < 0) missing('How deep was the stick wet? Write stick 34 cm, a figure for each open drum.');
  return byStick(rest.slice(0, end + 1).join(' '), words, sheet);
};

/** By the table that the line names with its first word, else by the usual one. */
const byStick = (typed: string, words: readonly string[], { dipTables }: Sheet): ByStick => {
  const said = words.map((word) => word.toLowerCase());
  const table =
    dipTables.find(({ name }) => said.includes(firstWord(name))) ??
    dipTables[0] ??
    missing('No dip table is set: write the litres.');
  const { litres, drums, words: read } = readDips(typed.replace(/\s*cm$/i, ''), table);
  return { litres: litres ?? missing(read), drums, by: `, ${table.name}, ${read}` };
};

export const firstWord = (name: string): string => name.split(' ')[0]!.toLowerCase();

export const after = (words: readonly string[], name: string): string | undefined =>
  words[words.findIndex((word) => word.toLowerCase() === name) + 1 || words.length];
