import { useIsFetching } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import {
  type Link,
  useCalendar,
  useEntriesWaiting,
  useLink,
  useMe,
  useSettings,
  useTerritoryTime,
} from '../api/index.js';
import { isWaiting, useLines } from '../paper/kept-lines.js';
import { inWords } from '../ui/index.js';
import { Person } from './person.js';

/** Where, which day, whether base hears us, what waits, who. */
export const TopLine = () => {
  const { operatingDate } = useCalendar();
  const settings = useSettings().value;
  const onTheWay = useEntriesWaiting();
  const kept = useLines().filter(isWaiting).length;
  const waiting = Math.max(onTheWay, kept);
  const me = useMe();
  return (
    <header className="top">
      <b>Drumline</b>
      {settings !== undefined && (
        <>
          <span className="territory">{settings.data.title.split(',')[0]}</span>
          {operatingDate !== '' && (
            <span>
              Operating date <b>{operatingDate}</b>
            </span>
          )}
        </>
      )}
      <span role="status">
        <LinkWords link={useLink()} />
      </span>
      <ReadingAgain />
      <span>{waiting === 0 ? 'No entries waiting' : `${inWords(waiting, 'entries')} waiting`}</span>
      <Person me={me} />
    </header>
  );
};

/** Since when, by the clock of the territory, which the whole page goes by. */
const LinkWords = ({ link }: { readonly link: Link }) => {
  const { time } = useCalendar();
  const ofTerritory = useTerritoryTime();
  if (link.state === 'with base') return <b className="pine">With base</b>;
  return (
    <>
      <span className="band">Not with base for {sinceWords(link.since)}</span>, since{' '}
      {time(ofTerritory(link.since.toISOString()))}
      {link.checking && ' Checking...'}
    </>
  );
};

/** Beside the time while the last picture is read again: said only where it takes long enough to wonder. */
const ReadingAgain = () => {
  const isReading = useIsFetching() > 0;
  const [isLong, setLong] = useState(false);
  useEffect(() => {
    if (!isReading) return;
    const timer = setTimeout(() => setLong(true), 700);
    return () => {
      clearTimeout(timer);
      setLong(false);
    };
  }, [isReading]);
  return isLong ? <span className="slate">Checking...</span> : null;
};

/** "2 h 10", "4 min". */
const sinceWords = (since: Date): string => {
  const minutes = Math.max(0, Math.round((Date.now() - since.getTime()) / 60_000));
  const rest = String(minutes % 60).padStart(2, '0');
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${rest}`;
};
