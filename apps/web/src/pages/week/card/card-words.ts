import { kilograms, poundsFromKilograms } from '@drumline/units';
import { actDone } from '../../../api/act-done.js';
import { figure, inWords, stockInWords } from '../../../ui/index.js';
import { limitWords } from '../board/box-words.js';
import type { WeekFlight } from '../week-read.js';
import type { Card, Heard, LegLimits, LimitLine, Today } from './card-read.js';

type When = (at: string) => string;

/** "4 drums of 5", and where there are too many aboard "5 drums, 4 may go". */
export const aboardWords = ({
  drumsAboard,
  drumsPossible,
}: Pick<LegLimits, 'drumsAboard' | 'drumsPossible'>): string =>
  drumsAboard > drumsPossible
    ? `${inWords(drumsAboard, 'drums')}, ${drumsPossible} may go`
    : `${inWords(drumsAboard, 'drums')} of ${drumsPossible}`;

/** Where fewer drums go than may: how many more would go, and what the caches need; null: as many go as may. */
export const fewerWords = (
  { ifDeclined }: Pick<Card, 'ifDeclined'>,
  { drumsAboard, drumsPossible, limits }: LegLimits,
): string | null => {
  const more = drumsPossible - drumsAboard;
  if (more <= 0 || limits[0]?.binds) return null;
  const next =
    limits[0] === undefined ? '' : `; what binds then: ${limitWords(limits[0].name, limits[0].place)}`;
  const needs = ifDeclined?.caches.map(
    ({ place, minimumLitres, withIt }) =>
      `With ${inWords(drumsAboard, 'drums')} ${place} is lowest at ${stockInWords(withIt.lowestLitres)}, minimum ${inWords(minimumLitres, 'L')}.`,
  );
  return [
    `Nothing binds at ${inWords(drumsAboard, 'drums')}: ${figure(more)} more would go${next}.`,
    ...(needs ?? []),
  ].join(' ');
};

/** Why a soft landing limit stands on a leg that is planned on a firmer strip; null: it does not. */
export const unknownWords = ({ limits, surface, to }: LegLimits): string | null =>
  surface !== 'soft' && limits.some((limit) => limit.surface === 'soft')
    ? `Nobody knows the surface of ${to}: unknown counts as soft. Planned as ${surface}.`
    : null;

/** Over is rounded up and spare down: neither is said to be better than it is. */
export const roomWords = (spareLb: number): string =>
  isOver(spareLb)
    ? `${inWords(Math.ceil(-spareLb), 'lb')} over`
    : `${inWords(Math.max(0, Math.floor(spareLb + 1e-6)), 'lb')} spare`;

export const isOver = (spareLb: number): boolean => spareLb < -1e-6;

/** "XLOR landing, soft"; positions have no pounds. */
export const limitName = ({ name, place, surface }: LimitLine): string => {
  const words = limitWords(name, place);
  const said = surface === null || name.startsWith('closed') ? words : `${words}, ${surface}`;
  return said.charAt(0).toUpperCase() + said.slice(1);
};

/** "06:52, strip helper. Stale at 18:52." after the mark of the surface; without a report, what counts. */
export const heardWords = ({ report, staleAt, isStale, counts }: Heard, when: When): string => {
  if (report === null) return `No report. Planned as ${counts}.`;
  const said = `${when(report.at)}, ${report.by}.`;
  if (report.untilDate !== undefined) return `${said} Expected so to ${when(report.untilDate)}.`;
  if (isStale) return `${said} Stale since ${when(staleAt!)}: planned as ${counts}.`;
  return `${said} Stale at ${when(staleAt!)}.`;
};

/** The planning weight of a drum, by which the card reckons: "at 180 kg a drum"; null: no drum is planned. */
export const planningWords = ({ load }: Pick<Today, 'load'>): string | null =>
  load.drums === 0 ? null : `at ${figure(load.kg / load.drums, 1).replace(/\.0$/, '')} kg a drum`;

/** What the drums set aside leave under the nearest of the weights of all legs, in the whole pounds of each, where the sum differs. */
export const weighedWords = ({ weighed, today }: Pick<Card, 'weighed' | 'today'>): string | null => {
  if (weighed === null || today === null) return null;
  const legs = today.legs.flatMap((leg, index) => {
    const { limits, drumsAboard } = leg;
    const nearest = limits.find((limit) => limit.limitLb !== null && !isToCompare(leg, limit));
    const weighedLb = weighed.lbOnLegs[index];
    if (nearest === undefined || weighedLb === undefined) return [];
    const plannedLb = Math.round(
      poundsFromKilograms(kilograms((today.load.kg / today.load.drums) * drumsAboard)),
    );
    return [{ nearest, lighterLb: plannedLb - weighedLb, room: nearest.spareLb + plannedLb - weighedLb }];
  });
  if (legs.every(({ lighterLb }) => lighterLb === 0)) return null;
  const { nearest, room } = legs.reduce((one, other) => (other.room < one.room ? other : one));
  const soft = nearest.surface === 'soft' ? ', soft,' : '';
  return `As weighed, ${inWords(weighed.kg, 'kg')}, as on Load: ${limitWords(nearest.name, nearest.place)}${soft} ${roomWords(room)}.`;
};

/** The dry landing limit of a strip that is soft. */
const isToCompare = ({ to, surface }: LegLimits, limit: LimitLine): boolean =>
  surface === 'soft' && limit.place === to && limit.surface === 'dry';

/** "FW3. Also fit: FW2, FW5." and why a named one is not fit. */
export const crewWords = (
  { crew, classes }: Pick<Today, 'crew' | 'classes'>,
  pilot: string | null,
): { readonly who: string; readonly unfit: string | null; readonly rest: string } => {
  const fit = crew.filter(({ whyNot }) => whyNot === null).map(({ id }) => id);
  const others = fit.filter((id) => id !== pilot);
  const listed =
    pilot === null
      ? fit.length === 0
        ? 'Nobody is fit for it.'
        : `Fit: ${fit.join(', ')}.`
      : others.length === 0
        ? 'Nobody else is fit.'
        : `Also fit: ${others.join(', ')}.`;
  const grades = classes.map(({ place, stripClass }) => `${place} is class ${stripClass}.`);
  return {
    who: pilot ?? 'Nobody named',
    unfit: crew.find(({ id }) => id === pilot)?.whyNot ?? null,
    rest: [listed, ...grades].join(' '),
  };
};

/** Cents per litre as the card prints them: "1.500 cr/L". */
export const perLitre = (cents: number, litres: number, currency: string): string =>
  litres === 0 ? '' : `${figure(cents / litres / 100, 3)} ${currency}/L`;

/** "F06 was approved by K. Aske at 07:02." */
export const lastActWords = ({ id, lastAct, changedByName, changedAt }: WeekFlight, when: When): string =>
  `${id} was ${actDone(lastAct)} by ${changedByName} at ${when(changedAt)}`;

/**
 * What it flies for by the facts of today. What a cache is to hold at the end is a target of the plan: today's levels do not
 * have it, so a flight that was planned for that says so as it was planned.
 */
export const forWords = ({ planned, today }: Pick<Card, 'planned' | 'today'>): string => {
  if (today === null) return planned.reason.text;
  const isForTheEnd = planned.reason.protects?.level === 'short of the end target';
  return isForTheEnd && today.planned.reason.protects === null
    ? `As planned: ${planned.reason.text}`
    : today.planned.reason.text;
};
