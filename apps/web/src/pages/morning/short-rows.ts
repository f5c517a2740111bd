import type { Calendar } from '../../api/index.js';
import { levelWords, moveWords, shortWords, workWords } from '../../slings/sling-remedy.js';
import { figure } from '../../ui/index.js';
import type { DecideRow } from './decide-row.js';
import type { Morning } from './morning-read.js';

/** Nothing stands from today on: the next step, and what falls meanwhile. Whether a plan has come since, an older picture cannot say. */
export const noPlanRows = (morning: Morning, calendar: Calendar, isOfBefore: boolean) => {
  const { flightsStanding, belowCritical, asOf } = morning;
  if (flightsStanding > 0) return [];
  const falls = belowCritical.map(({ place, date }) => `${place} ${dayOf(date, calendar)}`).join(', ');
  const time = calendar.when(asOf);
  const known =
    falls === '' ? 'No flight is offered or approved.' : `Below critical without flights: ${falls}.`;
  const row: DecideRow = {
    key: 'no plan',
    time: isOfBefore ? time : 'now',
    head: isOfBefore ? `No plan stood at ${time}` : 'No plan stands',
    state: '',
    needsDecision: false,
    words: isOfBefore
      ? `Base is silent: whether one was accepted since is not known here. At ${time}: ${known}`
      : known,
    act: isOfBefore
      ? { kind: 'open', label: 'Open week', path: '/week' }
      : { kind: 'open', label: 'Plan the week', path: '/week#plan' },
    canReplan: false,
  };
  return [[asOf, row]] as const;
};

/** A line a cache that no approved or offered flight keeps above critical, or above its minimum. */
export const belowRows = (morning: Morning, calendar: Calendar) => {
  if (morning.flightsStanding === 0) return [];
  const { belowCritical, belowMinimum, today } = morning;
  const critical = belowCritical.map((cache) => {
    const words = `${usableWords(cache.litres)}, critical ${figure(cache.criticalLitres)} L`;
    return { ...cache, level: 'critical', words, backOn: null };
  });
  const minimum = belowMinimum
    .filter(({ place }) => !hasSlingRow(morning, place))
    .map((cache) => {
      const words = `${usableWords(cache.litres)}, minimum ${figure(cache.minimumLitres)} L`;
      return { ...cache, level: 'minimum', words };
    });
  return [...critical, ...minimum].map(({ place, date, level, words, backOn }) => {
    // What stands short today and flights lift again is due by this evening, after all that has an hour.
    const isLiftedToday = backOn !== null && (date ?? today) === today;
    const remedy = remedyOf(morning, place, backOn === null ? null : calendar.day(backOn));
    const row: DecideRow = {
      key: `${level} ${place}`,
      time: dayOf(isLiftedToday ? today : date, calendar),
      head: `${place} below ${level}${isLiftedToday && date === null ? ' now' : ''}`,
      state: '',
      needsDecision: false,
      words: `${words}, with every approved and offered flight. ${remedy.words}`,
      act: { kind: 'open', label: 'Open cache', path: `/caches/${place}` },
      canReplan: remedy.canReplan,
    };
    return [isLiftedToday ? `${today} 24:00` : (date ?? today), row] as const;
  });
};

/** What may help: at a pad no flight does, so that a re-plan changes nothing there. */
const remedyOf = (
  morning: Morning,
  place: string,
  backOn: string | null,
): { readonly words: string; readonly canReplan: boolean } => {
  const isStrip = morning.strips.some((strip) => strip.place === place);
  const back = backOn === null ? '' : `At its minimum again ${backOn}. `;
  if (isStrip) return { words: `${back}Re-plan, or let less be drawn.`, canReplan: true };
  const sling = hasSlingRow(morning, place)
    ? 'Bring its sling forward: see its line'
    : 'Plan a sling, or bring one forward';
  return { words: `${back}Only slings bring drums there. ${sling}, or let less be drawn.`, canReplan: false };
};

const hasSlingRow = ({ slingRemedies }: Morning, place: string): boolean =>
  slingRemedies.some((remedy) => remedy.place === place && remedy.move !== null);

/** A line a cache that a sling would feed in time on an earlier day. */
export const slingRows = ({ slingRemedies }: Morning, calendar: Calendar) =>
  slingRemedies.flatMap((remedy) => {
    const { place, move } = remedy;
    if (move === null) return [];
    const row: DecideRow = {
      key: `sling ${place}`,
      time: calendar.day(move.date),
      head: `${place} below minimum, its sling comes later`,
      state: '',
      needsDecision: false,
      words: [
        shortWords(remedy, calendar.day),
        `Bring forward the ${moveWords(remedy, calendar.day)}:`,
        ...levelWords(remedy, calendar.day),
        workWords(remedy),
      ].join(' '),
      act: { kind: 'move sling', remedy, path: `/caches/${place}` },
      canReplan: false,
    };
    return [[move.date, row] as const];
  });

const dayOf = (date: string | null, calendar: Calendar): string =>
  date === null ? 'now' : calendar.day(date);

/** No cache holds less than nothing. */
const usableWords = (litres: number): string =>
  litres < 0 ? `Run out, ${figure(-litres)} L short` : `${figure(litres)} L usable`;

/** A base that cannot fill in time what approved flights want: they would leave without their drums. */
export const fillRows = ({ fillsShort }: Morning, calendar: Calendar) =>
  fillsShort.map(({ place, short, flights, by }) => {
    const row: DecideRow = {
      key: `fill ${place}`,
      time: calendar.when(by),
      head: `${place} cannot fill in time for ${flights.join(', ')}`,
      state: '',
      needsDecision: false,
      words: `${short.join(' ')} Fill them, amend the flight, or call it off.`,
      act: { kind: 'open', label: 'Open Drums, To fill', path: '/drums?view=fill' },
      canReplan: false,
    };
    return [by, row] as const;
  });
