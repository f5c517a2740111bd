import type { MovementBody } from '@drumline/contract';
import { deliveryTexts } from '@drumline/loading';
import { localDate, localTime } from '@drumline/units';
import type { ShownEntry } from '../../phone/index.js';

interface TextOf {
  readonly timeZone: string;
  /** Crew code of whoever has the phone, and their name. */
  readonly person: { readonly fullName: string; readonly crew: string | null };
}

type Delivered = Extract<MovementBody, { kind: 'left at' | 'brought home' }>;

/** A kept delivery as base reads it from any message; empty: it is no delivery, or takes one back. */
export const deliveryAsTexts = (
  { requests, flight, by }: Pick<ShownEntry, 'requests' | 'flight' | 'by'>,
  { timeZone, person }: TextOf,
): readonly string[] => {
  const moved = requests.map(({ body }) => body as MovementBody).filter(isDelivered);
  if (flight === null || moved.length === 0 || moved.length < requests.length) return [];
  const of = (kind: Delivered['kind']) =>
    moved.filter((each) => each.kind === kind).map(({ drum, condition }) => ({ number: drum, condition }));
  const { leg, place, happenedAt } = moved.find(({ kind }) => kind === 'left at') ?? moved[0]!;
  return deliveryTexts({
    ...{ flight, leg, place, left: of('left at'), back: of('brought home'), surface: null },
    ...{ date: localDate(happenedAt, timeZone), time: localTime(happenedAt, timeZone) },
    by: by === person.fullName && person.crew !== null ? person.crew : oneWord(by),
  });
};

const isDelivered = (body: MovementBody): body is Delivered =>
  body.kind === 'left at' || body.kind === 'brought home';

/** A name as one word, so that it ends where the message does. */
const oneWord = (name: string): string =>
  name
    .trim()
    .replace(/[\s,;]+/g, '-')
    .slice(0, 40);
