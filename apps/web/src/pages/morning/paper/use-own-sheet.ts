import { unlikeOwnCode } from '@drumline/loading';
import { useQueries } from '@tanstack/react-query';
import { ApiProblem, post, useRead } from '../../../api/index.js';
import { type OwnTotal, ownCodeSchema, ownTotalSchema } from './paper-read.js';
import type { ReadLine, Sheet, Wanted } from './sheet.js';

interface ToldTotal {
  readonly flight: string;
  readonly of: OwnTotal['of'];
  readonly typedLb: number;
}

/** What a line says of the sheet that it was loaded by, where base has that version. */
const ofOwnSheet = (read: ReadLine | null, { flights }: Pick<Sheet, 'flights'>) => {
  const body = read?.kind === 'entry' ? read.wanted.find(isLoad)?.body : undefined;
  const flight = flights.find(({ id }) => id === body?.flight);
  return body === undefined || flight === undefined || body.version !== flight.version
    ? null
    : { body, flight };
};

/** What a line says stands on its sheet, where base's own is of that version and of those drums. */
export const toldTotals = (read: ReadLine | null, sheet: Pick<Sheet, 'flights'>): readonly ToldTotal[] => {
  const own = ofOwnSheet(read, sheet);
  if (own === null) return [];
  const { body, flight } = own;
  const said = (body.drums as readonly { drum: string }[]).map(({ drum }) => drum).sort();
  const aside = flight.loads.flatMap(({ drum }) => drum ?? []).sort();
  if (said.join() !== aside.join()) return [];
  const { load, takeOff } = body.totals as { load: { bySheetLb: number }; takeOff: { bySheetLb: number } };
  return [
    { flight: flight.id, of: 'load', typedLb: load.bySheetLb },
    { flight: flight.id, of: 'take-off weight', typedLb: takeOff.bySheetLb },
  ];
};

/** The check code that a line reads off its sheet, where base has that version; null: none. */
export const toldCode = (read: ReadLine | null, sheet: Pick<Sheet, 'flights'>) => {
  const own = ofOwnSheet(read, sheet);
  if (own === null || typeof own.body.checkCode !== 'string') return null;
  return { flight: own.flight.id, version: own.flight.version, code: own.body.checkCode };
};

const isLoad = ({ body }: Wanted): boolean => body.kind === 'load';

/** How base's own sheet compares; told before the line is kept, and never which is right. Base compares again when it has the line. */
export const useOwnSheet = (read: ReadLine | null, sheet: Sheet): readonly string[] => {
  const code = useUnlikeCode(read, sheet);
  const told = toldTotals(read, sheet);
  const answers = useQueries({
    queries: told.map(({ flight, of, typedLb }) => ({
      queryKey: ['told total', flight, of, typedLb],
      queryFn: async () => {
        const path = `/api/flights/${encodeURIComponent(flight)}/totals`;
        return (await post(path, { of, typedLb, leg: 0 }, { schema: ownTotalSchema })).body;
      },
      retry: false,
      staleTime: 0,
    })),
  });
  const [problem] = answers.flatMap(({ error }) => (error instanceof ApiProblem ? [error] : []));
  if (problem !== undefined)
    return ["Base's own sheet cannot be asked now: base compares when it has the line."];
  return [...code, ...answers.flatMap(({ data }) => (data === undefined ? [] : unlikeWords(data)))];
};

const useUnlikeCode = (read: ReadLine | null, sheet: Sheet): readonly string[] => {
  const told = toldCode(read, sheet);
  const path = told === null ? null : `/api/flights/${encodeURIComponent(told.flight)}/check-code`;
  const own = useRead(path, ownCodeSchema).value?.checkCode ?? null;
  const words = told === null || own === null ? null : unlikeOwnCode(own, told.code, told.version);
  return words === null ? [] : [words];
};

export const unlikeWords = ({ agrees, of, words, slips, advice }: OwnTotal): readonly string[] =>
  agrees
    ? []
    : [
        [
          `The ${of} by base's sheet, and as it is written here: ${words}.`,
          ...slips.map((slip) => `${slip.title}: ${slip.words}`),
          advice,
        ].join(' '),
      ];
