import { type Link, useCalendar, useEntriesWaiting, useLink, useMe, useSettings } from '../api/index.js';
import { isWaiting, useLines } from '../paper/kept-lines.js';
import { inWords } from '../ui/index.js';
import { Person } from './person.js';

/** Where, which day, whether base hears us, what waits, who. */
export const TopLine = () => {
  const { date, today } = useCalendar();
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
          <span>
            Operating date <b>{date(today)}</b>
          </span>
        </>
      )}
      <span role="status">
        <LinkWords link={useLink()} />
      </span>
      <span>{waiting === 0 ? 'No entries waiting' : `${inWords(waiting, 'entries')} waiting`}</span>
      <Person me={me} />
    </header>
  );
};

const LinkWords = ({ link }: { readonly link: Link }) => {
  const { time } = useCalendar();
  if (link.state === 'with base') return <b className="pine">With base</b>;
  return (
    <>
      <span className="band">Not with base for {sinceWords(link.since)}</span>, since {time(link.since)}
      {link.checking && ' Checking...'}
    </>
  );
};

/** "2 h 10", "4 min". */
const sinceWords = (since: Date): string => {
  const minutes = Math.max(0, Math.round((Date.now() - since.getTime()) / 60_000));
  const rest = String(minutes % 60).padStart(2, '0');
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${rest}`;
};
