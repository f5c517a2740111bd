import { z } from 'zod';

const faultSchema = z.object({ path: z.string(), problem: z.string(), remedy: z.string() });

const documentSchema = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number(),
  detail: z.string(),
  instance: z.string().optional(),
  faults: z.array(faultSchema).optional(),
});

export type FieldFault = z.output<typeof faultSchema>;

interface Words {
  /** What did not happen. */
  readonly what: string;
  readonly why: string;
  /** What to do, or what is safe. */
  readonly next: string;
}

interface Answered {
  readonly status: number;
  readonly faults?: readonly FieldFault[];
  /** Number of the request in the server's log. */
  readonly request?: string;
}

/** Everything that can be wrong with a request, in words for a person. `kind` is the server's word for it. */
export class ApiProblem extends Error {
  readonly what: string;
  readonly why: string;
  readonly next: string;
  readonly status: number;
  readonly faults: readonly FieldFault[];
  readonly request: string | undefined;

  constructor(
    readonly kind: string,
    words: Words,
    { status, faults = [], request }: Answered = { status: 0 },
  ) {
    super(`${words.what}. ${words.why} ${words.next}`);
    this.what = words.what;
    this.why = words.why;
    this.next = words.next;
    this.status = status;
    this.faults = faults;
    this.request = request;
  }

  /** The same, with its faults in other words. */
  withFaults(faults: readonly FieldFault[]): ApiProblem {
    const { kind, what, why, next, status, request } = this;
    return new ApiProblem(
      kind,
      { what, why, next },
      { status, faults, ...(request === undefined ? {} : { request }) },
    );
  }

  /** No answer, or an answer that says the server cannot work now: the same request may be sent again. */
  get isOutOfReach(): boolean {
    return this.kind === 'out-of-reach' || this.status === 502 || this.status === 503 || this.status === 504;
  }

  /** The server said nothing of the thing itself: what it said last may still be so. */
  get isSilence(): boolean {
    return this.kind === 'out-of-reach' || this.status >= 500;
  }
}

/** `asked`: a read is tried again by itself, an entry by whoever made it: the same one twice counts once. */
export const outOfReach = (asked: 'read' | 'entry' = 'read'): ApiProblem =>
  new ApiProblem('out-of-reach', {
    what: 'Could not reach base store',
    why: 'The server does not answer.',
    next:
      asked === 'read'
        ? 'It is tried again by itself.'
        : 'What you entered stays here: press again when base answers.',
  });

/** Reads a problem document (RFC 9457); an error page of a proxy is one without words. */
export const problemOf = (status: number, body: unknown, asked: 'read' | 'entry' = 'read'): ApiProblem => {
  const read = documentSchema.safeParse(body);
  if (!read.success) {
    if (status === 502 || status === 503 || status === 504) return outOfReach(asked);
    return new ApiProblem(
      'unread',
      {
        what: `The server answered ${status}`,
        why: 'It said nothing more.',
        next: 'Try again; tell set-up.',
      },
      { status },
    );
  }
  const { type, title, detail, faults = [], instance } = read.data;
  return new ApiProblem(
    type.replace('urn:drumline:problem:', ''),
    { what: title, ...whyAndNext(detail) },
    { status, faults, ...(instance === undefined ? {} : { request: instance.split(':').at(-1)! }) },
  );
};

/** The server's sentences end with what to do. */
const whyAndNext = (detail: string): Omit<Words, 'what'> => {
  const sentences = detail.split(/(?<=[.!?])\s+(?=[A-Z0-9])/);
  return {
    why: sentences.slice(0, -1).join(' ') || detail,
    next: sentences.length > 1 ? sentences.at(-1)! : '',
  };
};

export const asProblem = (error: unknown): ApiProblem => {
  if (error instanceof ApiProblem) return error;
  return new ApiProblem('page-fault', {
    what: 'This page made a mistake',
    why: error instanceof Error ? error.message : String(error),
    next: 'Load the page again; tell set-up.',
  });
};
