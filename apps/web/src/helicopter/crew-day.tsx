import { type Litres, litres, print } from '@drumline/units';
import { Link } from 'wouter';
import { DayPage, dateWords, dayWords, type Person, timeWords } from '../phone/index.js';
import { cacheView, leftToDraw, placesInOrder } from './cache-view.js';
import { LevelMark } from './level-mark.js';
import { slingPlans } from './sling/sling.js';
import type { PlacesHere } from './use-places.js';

/** What this helicopter does today and next, and how the caches stand. */
export const CrewDay = ({ here, person }: { readonly here: PlacesHere; readonly person: Person }) => {
  const { places } = here;
  const flying = places.helicopter === null ? '' : ` · ${places.helicopter.id}, ${places.helicopter.name}`;
  return (
    <DayPage title={dateWords(here.at)} below={`${person.fullName}${flying}`}>
      <Work here={here} />
      <h2 className="sect">Caches</h2>
      <ul className="rows">
        {placesInOrder(here).map((place) => (
          <CacheRow key={place} here={here} place={place} />
        ))}
      </ul>
      <p className="foot">
        Read {timeWords(here.readAt)}, with what this phone has reported since. For use on the ground only.
        Planning figures: the commander’s approved data decide.
      </p>
    </DayPage>
  );
};

const Work = ({ here }: { readonly here: PlacesHere }) => {
  const { places, today } = here;
  const tasks = places.tasks.filter(({ date }) => date === today);
  const slings = slingPlans(here).slice(0, 2);
  const nameOf = (code: string) => places.programmes.find((each) => each.code === code)?.name ?? '';
  return (
    <>
      <h2 className="sect">Your work</h2>
      {tasks.length === 0 && <p className="said">No task given to you for today.</p>}
      <ul className="rows">
        {tasks.map(({ programme, place, hours, litres: planned, note }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two tasks of a day may be alike, and none has a name
          <li key={index}>
            <Link className="row" href={`/at/${place}`}>
              <b>
                {programme} {nameOf(programme)}
              </b>
              <span className="side">{print(planned, 'L')}</span>
              <span className="sub">
                {print(hours, 'h', 1)}, drawn at {place}
                {leftWords(planned, leftToDraw(here, { programme, place }))}
                {note === undefined ? '' : ` · ${note}`}
              </span>
            </Link>
          </li>
        ))}
        {slings.map(({ date, from, to, drums, setDown, distanceNm }) => (
          <li key={`${date} ${from} ${to}`}>
            <Link className="row" href={`/at/${from}/sling`}>
              <b>
                Sling {from} to {to}
              </b>
              <span className="side">{drums} drums</span>
              <span className="sub">
                {date === today ? 'Today' : dayWords(date)}, {print(distanceNm, 'NM', 1)}
                {setDown > 0 && ` · ${setDown} of ${drums} set down`}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
};

/** " · 225 L drawn, 225 L left"; empty: nothing is drawn yet. */
const leftWords = (planned: Litres, left: Litres): string =>
  left >= planned ? '' : ` · ${print(litres(planned - left), 'L')} drawn, ${print(left, 'L')} left`;

const CacheRow = ({ here, place }: { readonly here: PlacesHere; readonly place: string }) => {
  const { name, stock, level } = cacheView(here, place);
  return (
    <li>
      <Link className="row" href={`/at/${place}`}>
        <b>
          {name} {place}
        </b>
        <span className="side">{print(stock.usableLitres, 'L')}</span>
        <span className="sub">{level === null ? 'No levels are set' : <LevelMark level={level} />}</span>
      </Link>
    </li>
  );
};
