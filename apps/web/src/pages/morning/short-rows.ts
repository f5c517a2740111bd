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
    act: { kind: 'open', label: isOfBefore ? 'Open week' : 'Plan the week', path: '/week' },
    canReplan: false,
  };
  return [[asOf, row]] as const;
};

/** A line a cache that no approved or offered flight keeps above critical. */
export const criticalRows = ({ flightsStanding, belowCritical, asOf }: Morning, calendar: Calendar) =>
  flightsStanding === 0
    ? []
    : belowCritical.map((cache) => {
        const { place, date, litres, criticalLitres } = cache;
        const row: DecideRow = {
          key: `critical ${place}`,
          time: dayOf(date, calendar),
          head: `${place} below critical`,
          state: '',
          needsDecision: false,
          words: `${usableWords(litres)}, critical ${figure(criticalLitres)} L, with every approved and offered flight. Re-plan, or let less be drawn.`,
          act: { kind: 'open', label: 'Open cache', path: `/caches/${place}` },
          canReplan: true,
        };
        return [date ?? asOf, row] as const;
      });

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
