import { capital } from '../../../ui/index.js';
import { labelsAt } from '../form/typed-faults.js';
import { sections, specOf } from '../sections.js';

export type CsvName = 'strip-limits' | 'helicopter-tasks' | 'drums';

/** Columns that stand elsewhere in the form than in the file, or in no form. */
const inForm: Readonly<Record<string, string>> = {
  softTakeoffLessLb: 'whenSoft.takeoffLessLb',
  softLandingLessLb: 'whenSoft.landingLessLb',
};

/** What the page calls a column of the file: "Take-off limit, dry or damp" for takeoffLb. */
export const columnWords = (of: CsvName, column: string): string => {
  if (column === '') return '';
  const list = sections.find(({ name }) => name === of)?.list ?? 'drums';
  return capital(labelsAt(specOf({ list }, ''), inForm[column] ?? column));
};
