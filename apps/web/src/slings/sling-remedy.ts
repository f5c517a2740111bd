import { z } from 'zod';
import { inWords, stockInWords } from '../ui/index.js';

const lowestSchema = z.object({ date: z.string(), litres: z.number() });
const levelsSchema = z.object({
  place: z.string(),
  minimumLitres: z.number(),
  before: lowestSchema,
  after: lowestSchema,
});
/** As it is kept; it is sent back whole: what the page does not know stays in it. */
export const slingSchema = z
  .object({
    date: z.string(),
    helicopter: z.string(),
    from: z.string(),
    to: z.string(),
    drums: z.number(),
  })
  .loose();

/** As /api/projections and /api/morning give it: a cache that falls short before a sling that feeds it. */
export const slingRemedySchema = z.object({
  place: z.string(),
  shortOn: z.string(),
  shortLitres: z.number(),
  minimumLitres: z.number(),
  criticalLitres: z.number(),
  sling: slingSchema,
  kept: z.object({ id: z.string(), version: z.number(), data: slingSchema }).nullable(),
  move: z
    .object({
      date: z.string(),
      effect: z.enum(['removes', 'lessens']),
      fed: levelsSchema,
      source: levelsSchema,
      work: z.object({ lifts: z.number(), hours: z.number().nullable(), litres: z.number().nullable() }),
      hoursThen: z.number(),
      hoursOwnDay: z.number(),
    })
    .nullable(),
  notOn: z.array(z.object({ date: z.string(), why: z.string() })),
});

export type SlingRemedy = z.output<typeof slingRemedySchema>;
type Day = (date: string) => string;

/** "XMAR ends Wed 16 with 39 L, minimum 400 L, critical 200 L." */
export const shortWords = (remedy: SlingRemedy, day: Day): string => {
  const { place, shortOn, shortLitres, minimumLitres, criticalLitres } = remedy;
  return `${place} ends ${day(shortOn)} ${shortLitres < 0 ? '' : 'with '}${stockInWords(shortLitres)}, minimum ${inWords(minimumLitres, 'L')}, critical ${inWords(criticalLitres, 'L')}.`;
};

/** "sling of 6 drums XESK to XMAR, H1, from Thu 17 to Tue 15". */
export const moveWords = ({ sling, move }: SlingRemedy, day: Day): string => {
  const what = `sling of ${inWords(sling.drums, 'drums')} ${sling.from} to ${sling.to}, ${sling.helicopter}`;
  return move === null
    ? `${what}, ${day(sling.date)}`
    : `${what}, from ${day(sling.date)} to ${day(move.date)}`;
};

/** What it does to both caches, evening by evening between the two days. */
export const levelWords = ({ move }: SlingRemedy, day: Day): readonly string[] =>
  move === null
    ? []
    : [move.fed, move.source].map(
        ({ place, before, after, minimumLitres }) =>
          `${place} lowest ${stockInWords(before.litres)} ${day(before.date)}; moved, ${stockInWords(after.litres)} ${day(after.date)}; minimum ${inWords(minimumLitres, 'L')}.`,
      );

/** "H1 flies 2 lifts, about 1.3 h and 149 L on top of its tasks: 4.8 h that day." */
export const workWords = ({ sling, move }: SlingRemedy): string => {
  if (move === null) return '';
  const { lifts, hours, litres } = move.work;
  const many = lifts === 1 ? '1 lift' : `${lifts} lifts`;
  if (hours === null || litres === null)
    return `${sling.helicopter} flies ${many}; how long that takes is not set for it. Its tasks that day: ${inWords(move.hoursThen, 'h', 1)}.`;
  return `${sling.helicopter} flies ${many}, about ${inWords(hours, 'h', 1)} and ${inWords(litres, 'L')} on top of its tasks: ${inWords(move.hoursThen, 'h', 1)} that day.`;
};

/** Why no day nearer to its own will do. */
export const notOnWords = ({ notOn }: SlingRemedy, day: Day): string =>
  notOn.map(({ date, why }) => `Not ${day(date)}: ${why}.`).join(' ');
