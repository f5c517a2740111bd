import type { SurfaceState } from '@drumline/network';

/** Who spoke, by the words that no other part of a line has taken; null: nobody is named. */
export type WhoSpoke = { readonly who: string | null } | { readonly fault: string };

/** "helper", "J. Holm", "RW2"; any other name behind "by". A word that is no name is asked about, never taken for one. */
export const whoSpoke = (words: readonly string[], place: string): WhoSpoke => {
  const said = words.filter((word) => word.toLowerCase() !== 'radio');
  const by = said.findIndex((word) => word.toLowerCase() === 'by');
  const isName = (word: string, at: number): boolean =>
    isKnown(word) || namesAGroup(said, at) || (by >= 0 && at > by && isWord(word));
  const strange = said.filter((word, at) => at !== by && !isName(word, at));
  if (strange.length > 0) return { fault: strangeWords(strange, place) };
  const who = said.filter((_, at) => at !== by).join(' ');
  return { who: who === '' ? null : speakerWords(who) };
};

/** As it is kept, of what was typed. */
export const speakerWords = (who: string): string => spoken[who.toLowerCase()] ?? who;

/** What people write for short. */
const spoken: Readonly<Record<string, string>> = {
  '': 'not said who',
  unknown: 'not said who',
  helper: 'strip helper',
};

export const states: readonly SurfaceState[] = ['dry', 'damp', 'soft', 'closed'];

/** People who speak by what they do. */
const roles =
  'helper strip pilot crew commander dispatcher storekeeper engineer field leader camp unknown'.split(' ');

/** Whose work is named before them. */
const groups = ['camp', 'crew'];

/** Written large too they are nobody's name. */
const ofWeather =
  'wet mud muddy snow ice icy rain fog wind tailwind headwind crosswind gusts calm kt kts knots until'.split(
    ' ',
  );

export const isSurface = (word: string): boolean => states.some((state) => state === word.toLowerCase());

const isWord = (word: string): boolean =>
  /^\p{L}[\p{L}.'’-]*\d{0,2}$/u.test(word) && !isSurface(word) && !ofWeather.includes(word.toLowerCase());

const isRole = (word: string): boolean => roles.includes(word.toLowerCase());

const isKnown = (word: string): boolean => isRole(word) || (/^\p{Lu}/u.test(word) && isWord(word));

/** "survey" of "survey camp", "of" of "crew of A1". */
const namesAGroup = (said: readonly string[], at: number): boolean => {
  const [before = '', word = '', after = ''] = [said[at - 1], said[at], said[at + 1]];
  if (['of', 'at'].includes(word.toLowerCase())) return isRole(before) && isKnown(after);
  return isWord(word) && groups.includes(after.toLowerCase());
};

const strangeWords = (strange: readonly string[], place: string): string => {
  const surfaces = strange.filter(isSurface);
  const all = strange.join(' ');
  if (surfaces.length > 0)
    return `${place}: two surfaces, "${surfaces.join(' ')}" behind the first: which? Write one of them.`;
  if (/^\d{1,2}:?\d\d$/.test(all))
    return `"${all}" is a second time of day: which? A report has one, and holds to the end of the day behind until.`;
  const asked = `"${all}" is not understood: a report has strip, surface, time, who spoke, and until when.`;
  return strange.every(isWord)
    ? `${asked} If it is who spoke, write by ${all}.`
    : `${asked} Wind and the rest are not kept here: leave it out.`;
};
