import { useCalendar } from '../../../api/index.js';
import { useSheet } from './use-sheet.js';

/** Shows nothing: reads what lines of the sheet of today are read by. */
export const SheetRead = () => {
  useSheet({ day: useCalendar().today, means: 'paper', by: '' });
  return null;
};
