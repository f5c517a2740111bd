import type { Calendar } from '../../../api/index.js';
import { figure, inWords, levelsWith } from '../../../ui/index.js';
import type { ShortBy, Week } from '../week-read.js';
import { GapWords } from './gap-ruler.js';

interface TallyLineProps {
  readonly week: Week;
  readonly calendar: Calendar;
  readonly currency: string;
}

/** What the money does not say: drums in question, shortage in litre-days, drums expected, what the bases give. */
export const TallyLine = ({ week, calendar, currency }: TallyLineProps) => {
  const { tally, flights, today, lastDay, plan, stripLimitsFrom } = week;
  const inQuestion = flights
    .filter(({ needsDecision, date }) => needsDecision !== null && date >= today)
    .reduce((sum, { drums }) => sum + drums, 0);
  return (
    <p className="week-tally">
      {plan?.isAsAccepted === true && <GapWords plan={plan} currency={currency} />}
      {inQuestion > 0 && <b className="plum">{inWords(inQuestion, 'drums')} in question</b>}
      <Short name="Below critical" by={tally.belowCritical} day={calendar.day} />
      <Short name="Below minimum" by={tally.belowMinimum} day={calendar.day} />
      <span>
        Ahead <b>{inWords(tally.drums, 'drums')}</b>, {expectedWords(tally)}
      </span>
      <span className="slate">
        to {calendar.day(lastDay)}, {levelsWith(plan?.laterIdeas ?? 0)}
      </span>
      {tally.bases
        .filter(({ drumsTaken }) => drumsTaken > 0)
        .map(({ place, drumsTaken, drumsReady }) => (
          <span key={place}>
            From {place} <b>{inWords(drumsTaken, 'drums')}</b>, {drumsReady} can be ready
            {drumsTaken > drumsReady && (
              <b className="plum">
                {' '}
                {inWords(drumsTaken - drumsReady, 'drums')} too many: fill more at {place}, or re-plan
              </b>
            )}
          </span>
        ))}
      {stripLimitsFrom.length > 0 && (
        <span className="narrow-only">
          Strip limits <b>{stripLimitsFrom[0]}</b>
          {stripLimitsFrom.length > 1 && ` and ${stripLimitsFrom.length - 1} more`}
        </span>
      )}
    </p>
  );
};

/** Without odds of weather every flight counts as flown: that is no forecast. */
const expectedWords = ({ drums, expectedDrums }: Week['tally']): string =>
  drums > 0 && expectedDrums === drums ? 'no weather odds entered' : `${figure(expectedDrums, 1)} expected`;

interface ShortProps {
  readonly name: string;
  readonly by: ShortBy;
  readonly day: Calendar['day'];
}

const Short = ({ name, by: { litreDays, first }, day }: ShortProps) => (
  <span className={first === null ? '' : 'ochre'}>
    {name} <b>{figure(litreDays)} litre-days</b>
    {first !== null && `, ${first.place} ${day(first.date)}`}
  </span>
);

/** Nothing offered: one sentence with what is known all the same. */
export const emptyWords = ({ tally, lastDay }: Week, calendar: Calendar): string => {
  const { belowCritical, belowMinimum } = tally;
  const [short, level] =
    belowCritical.first === null ? [belowMinimum.first, 'minimum'] : [belowCritical.first, 'critical'];
  return short === null
    ? `No flights offered. All caches stay above minimum to ${calendar.day(lastDay)}.`
    : `No flights offered. ${short.place} falls below ${level} on ${calendar.day(short.date)}.`;
};
