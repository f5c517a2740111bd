import { useEffect, useState } from 'react';
import { useCalendar } from '../../api/index.js';
import { useSheet } from './paper/use-sheet.js';

/** When the first page has been read, and for as long as reading takes on a slow line: nothing is read again afterwards. */
const fromMs = 8_000;
const untilMs = 60_000;

/** What lines of Radio and paper are read by, once: they can be kept though nobody has opened that page before base falls silent. */
export const ReadAhead = () => {
  const [isOn, setOn] = useState(false);
  useEffect(() => {
    const timers = [setTimeout(() => setOn(true), fromMs), setTimeout(() => setOn(false), untilMs)];
    return () => timers.forEach(clearTimeout);
  }, []);
  return isOn ? <Sheet /> : null;
};

const Sheet = () => {
  useSheet({ day: useCalendar().today, means: 'paper', by: '' });
  return null;
};
