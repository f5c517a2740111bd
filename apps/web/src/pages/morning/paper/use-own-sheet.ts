import { useQueries } from '@tanstack/react-query';
import { ApiProblem, post } from '../../../api/index.js';
import { type OwnTotal, ownTotalSchema } from './paper-read.js';
import type { ReadLine, Sheet, Wanted } from './sheet.js';

interface ToldTotal {
  readonly flight: string;
  readonly of: OwnTotal['of'];
  readonly typedLb: number;
}

/** What a line says stands on its sheet, where base's own is of that version and of those drums. */
export const toldTotals = (
  read: ReadLine | null,
  { flights }: Pick<Sheet, 'flights'>,
): readonly ToldTotal[] => {
  const body = read?.kind === 'entry' ? read.wanted.find(isLoad)?.body : undefined;
  const flight = flights.find(({ id }) => id === body?.flight);
  if (body === undefined || flight === undefined || body.version !== flight.version) return [];
  const said = (body.drums as readonly { drum: string }[]).map(({ drum }) => drum).sort();
  const aside = flight.loads.flatMap(({ drum }) => drum ?? []).sort();
  if (said.join() !== aside.join()) return [];
  const { load, takeOff } = body.totals as { load: { bySheetLb: number }; takeOff: { bySheetLb: number } };
  return [
    { flight: flight.id, of: 'load', typedLb: load.bySheetLb },
    { flight: flight.id, of: 'take-off weight', typedLb: takeOff.bySheetLb },
  ];
};

const isLoad = ({ body }: Wanted): boolean => body.kind === 'load';

/** How base's own sheet compares; told before the line is kept, and never which is right. Base compares again when it has the line. */
export const useOwnSheet = (read: ReadLine | null, sheet: Sheet): readonly string[] => {
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
  return answers.flatMap(({ data }) => (data === undefined ? [] : unlikeWords(data)));
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
