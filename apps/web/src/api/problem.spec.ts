import { describe, expect, it } from 'vitest';
import { problemOf } from './problem.js';

const document = {
  type: 'urn:drumline:problem:stale-version',
  title: 'Changed by somebody else meanwhile',
  status: 412,
  detail: 'F06 is at version 3 by now. Read it again and repeat your change on that.',
  instance: 'urn:drumline:request:9a1b',
};

describe('a refusal of the server', () => {
  it('says what, why and what next', () => {
    const { kind, what, why, next, request } = problemOf(412, document);
    expect({ kind, what, why, next, request }).toEqual({
      kind: 'stale-version',
      what: 'Changed by somebody else meanwhile',
      why: 'F06 is at version 3 by now.',
      next: 'Read it again and repeat your change on that.',
      request: '9a1b',
    });
  });

  it('of one sentence is a reason; a figure inside it does not part it', () => {
    const { why, next } = problemOf(422, {
      ...document,
      detail: '6 drums are 531.5 lb over, see manual 8.4',
    });
    expect([why, next]).toEqual(['6 drums are 531.5 lb over, see manual 8.4', '']);
  });

  it('names the fields at fault', () => {
    const faults = [{ path: 'stops[0].drums', problem: 'is 0.', remedy: 'Write at least 1.' }];
    expect(problemOf(422, { ...document, faults }).faults).toEqual(faults);
  });

  it('without words, from a proxy whose server is away, is base out of reach', () => {
    expect(problemOf(502, '<html>Bad gateway</html>').isOutOfReach).toBe(true);
    expect(problemOf(500, '').isOutOfReach).toBe(false);
  });
});
