import type { Fault } from '@drumline/contract';

/** Words by which a program tells one problem from another; a person reads `title` and `detail`. */
export type ProblemKind =
  | 'bad-request'
  | 'body-too-large'
  | 'cross-site'
  | 'faults'
  | 'gone-wrong'
  | 'not-allowed'
  | 'not-found'
  | 'not-set-up'
  | 'not-signed-in'
  | 'password-to-be-changed'
  | 'second-person-needed'
  | 'stale-version'
  | 'too-many-attempts'
  | 'unavailable'
  | 'version-needed'
  | 'wrong-content-type'
  | 'conflict';

const titles: Readonly<Record<ProblemKind, readonly [status: number, title: string]>> = {
  'bad-request': [400, 'The request cannot be read'],
  'not-signed-in': [401, 'Not signed in'],
  'not-allowed': [403, 'Not allowed'],
  'cross-site': [403, 'Not sent from the Drumline page'],
  'password-to-be-changed': [403, 'The one-time password has to be changed first'],
  'second-person-needed': [403, 'A second person is needed'],
  'not-found': [404, 'Not found'],
  conflict: [409, 'At odds with what is there'],
  'not-set-up': [409, 'Not set up yet'],
  'stale-version': [412, 'Changed by somebody else meanwhile'],
  'body-too-large': [413, 'The body is too large'],
  'wrong-content-type': [415, 'The body is of a kind that is not read here'],
  faults: [422, 'Some fields have to be put right'],
  'version-needed': [428, 'Say which version you changed'],
  'too-many-attempts': [429, 'Too many attempts'],
  'gone-wrong': [500, 'Something went wrong on the server'],
  unavailable: [503, 'Not available at the moment'],
};

/** Each status a problem may have, with its titles. */
export const problemTitles: ReadonlyMap<number, readonly string[]> = new Map(
  Object.values(titles).map(([status]) => [
    status,
    Object.values(titles).flatMap(([other, title]) => (other === status ? [title] : [])),
  ]),
);

/** An error that is answered as RFC 9457 says. `detail` says what happened and what to do. */
export class Problem extends Error {
  constructor(
    readonly kind: ProblemKind,
    readonly detail: string,
    readonly faults: readonly Fault[] = [],
    readonly headers: Readonly<Record<string, string>> = {},
  ) {
    super(detail);
  }

  get status(): number {
    return titles[this.kind][0];
  }

  /** The body, of type application/problem+json. */
  body(requestId: string) {
    const [status, title] = titles[this.kind];
    return {
      type: `urn:drumline:problem:${this.kind}`,
      title,
      status,
      detail: this.detail,
      instance: `urn:drumline:request:${requestId}`,
      ...(this.faults.length > 0 ? { faults: this.faults } : {}),
    };
  }
}
