import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FlightState } from '../scenario.js';
import { actsOpen, type FlightStanding, type FlightStep, nextState } from './next-state.js';
import { replanFreedom, standingState } from './replan-freedom.js';
import type { FlightAct, FlightRole, Need } from './transition.js';
import { stateMeanings, transitions } from './transitions.js';

const everything: readonly Need[] = [
  'checked today',
  'pilot',
  'totals agreed',
  'surface known',
  'no held drum',
  'every drum accounted for',
  'costs and hours',
];
const flight = (state: FlightState, needsDecision: string | null = null): FlightStanding => ({
  id: 'F05',
  state,
  version: 1,
  needsDecision,
});
const step = (
  act: FlightAct,
  role: FlightRole = 'dispatcher',
  rest: Partial<FlightStep> = {},
): FlightStep => ({
  act,
  by: { name: 'Ana', role },
  reason: 'weather',
  met: everything,
  ...rest,
});
const moved = (from: FlightStanding, ...steps: readonly FlightStep[]): FlightStanding =>
  steps.reduce((now, each) => {
    const answer = nextState(now, each);
    if (answer.kind === 'refused') throw new Error(answer.words);
    return answer.flight;
  }, from);
const words = (from: FlightStanding, each: FlightStep): string => {
  const answer = nextState(from, each);
  return answer.kind === 'refused' ? answer.words : `moved to ${answer.flight.state}`;
};
const states = Object.keys(stateMeanings) as FlightState[];
const acts = [...new Set(transitions.map(({ act }) => act))];
const roles = [...new Set(transitions.flatMap(({ who }) => who))];

describe('a flight that goes well', () => {
  it('is offered, approved, given, loaded, away, home, reported and closed', () => {
    const end = moved(
      flight('idea'),
      step('offer', 'planner'),
      step('approve'),
      step('give'),
      step('load', 'pilot'),
      step('take off', 'pilot'),
      step('land', 'pilot'),
      step('report', 'pilot'),
      step('close', 'accounts'),
    );
    expect(end).toEqual({ ...flight('closed') });
  });

  it('has nothing left to do once it is closed, declined or called off', () => {
    for (const state of ['closed', 'declined', 'called off'] as const)
      for (const role of roles) expect(actsOpen(state, role)).toEqual([]);
  });
});

describe('what stands in the way is said', () => {
  it.each<[string, FlightStanding, FlightStep, string]>([
    [
      'a pilot does not approve',
      flight('offered'),
      step('approve', 'pilot'),
      'it takes operations manager or dispatcher',
    ],
    [
      'a flight is declined with a reason',
      flight('offered'),
      step('decline', 'dispatcher', { reason: ' ' }),
      'a reason has to be given',
    ],
    [
      'totals that differ',
      flight('given'),
      step('load', 'pilot', { met: [] }),
      'the two totals have to agree',
    ],
    [
      'a surface that is unknown',
      flight('given'),
      step('load', 'pilot', { met: ['totals agreed', 'no held drum'] }),
      'the surface has to be known from a fresh report',
    ],
    [
      'a held drum',
      flight('given'),
      step('load', 'storekeeper', { met: ['totals agreed', 'surface known'] }),
      'every drum that is held has to stay behind',
    ],
    [
      'a drum is missing',
      flight('home'),
      step('report', 'pilot', { met: [] }),
      'every drum aboard has to be accounted for',
    ],
    [
      'an offered flight does not take off',
      flight('offered'),
      step('take off', 'pilot'),
      'F05 is offered: to take off, a flight has to be loaded, approved or given',
    ],
    [
      'a flight that is away is not called off',
      flight('away'),
      step('call off'),
      'F05 is away: to call off, a flight has to be',
    ],
    [
      'a decision is open',
      flight('approved', 'LOR is soft'),
      step('give'),
      'the decision it needs has to be taken first (LOR is soft)',
    ],
  ])('%s', (_, from, each, part) => {
    expect(words(from, each)).toContain(part);
  });
});

describe('side exits', () => {
  it('a called-off flight hands its drums back to the pick list, and so does one let go', () => {
    expect(nextState(flight('given'), step('call off'))).toMatchObject({ handsDrumsBack: true });
    expect(nextState(flight('given'), step('let go'))).toMatchObject({
      handsDrumsBack: true,
      flight: { state: 'offered', version: 2 },
    });
  });

  it('a flight that turned back or ended elsewhere still accounts for every drum', () => {
    for (const act of ['turn back', 'end elsewhere'] as const)
      expect(moved(flight('away'), step(act, 'pilot'), step('report', 'pilot')).state).toBe('reported');
  });

  it('a take-off that nobody loaded for is accepted and raised', () => {
    expect(nextState(flight('given'), step('take off', 'pilot'))).toMatchObject({
      flight: { state: 'away' },
      raised: 'F05: it took off before its totals were agreed.',
    });
  });

  it('a pilot refuses without a reason; the flight then needs a decision', () => {
    const { reason: _, ...bare } = step('refuse', 'pilot');
    expect(moved(flight('loaded'), bare)).toMatchObject({
      state: 'given',
      needsDecision: 'Ana will not fly it',
    });
  });

  it('"Needs a decision" is settled by keeping the flight as it is', () => {
    const marked = moved(flight('given'), step('mark', 'planner', { reason: 'B1 is out' }));
    expect(marked).toMatchObject({ state: 'given', needsDecision: 'B1 is out' });
    expect(moved(marked, step('keep')).needsDecision).toBeNull();
  });

  it('a mark that a hold set goes with the release, without anybody having decided', () => {
    const marked = moved(flight('approved'), step('mark', 'planner', { reason: 'J27-041 is held' }));
    expect(moved(marked, step('unmark', 'planner')).needsDecision).toBeNull();
    expect(words(marked, step('unmark'))).toContain('it takes planner');
  });

  it('an amended flight has a new version; loaded, it is loaded again', () => {
    expect(moved(flight('given'), step('amend'))).toMatchObject({ state: 'given', version: 2 });
    expect(moved(flight('loaded'), step('amend'))).toMatchObject({ state: 'given', version: 2 });
  });
});

describe('frozen flights', () => {
  it('frozen flights: a re-plan changes ideas and offered flights only', () => {
    expect(states.filter((state) => replanFreedom(state) === 'free')).toEqual(['idea', 'offered']);
    expect(states.filter((state) => replanFreedom(state) === 'when let go')).toEqual(['approved', 'given']);
  });

  it('frozen flights: no act of a planning run moves an approved flight or a later one', () => {
    for (const { from, who, to } of transitions)
      if (who.includes('planner') && from.some((state) => replanFreedom(state) !== 'free'))
        expect(to).toBe('same');
  });

  it('frozen flights: ideas, declined and called-off flights are no part of a plan', () => {
    expect(states.filter((state) => standingState(state) === null)).toEqual([
      'idea',
      'declined',
      'called off',
    ]);
    expect(standingState('turned back')).toBe('home');
  });
});

describe('laws of the state machine', () => {
  it('an act in a state leads one way only', () => {
    const pairs = transitions.flatMap(({ act, from }) => from.map((state) => `${state} > ${act}`));
    expect(pairs).toHaveLength(new Set(pairs).size);
  });

  it('whatever is done, a flight is moved or the refusal names it; versions never go back; away is never undone', () => {
    const later: readonly FlightState[] = [
      'away',
      'home',
      'reported',
      'closed',
      'turned back',
      'ended elsewhere',
    ];
    const anyStep = fc.record({
      act: fc.constantFrom(...acts),
      by: fc.record({ name: fc.constant('Ana'), role: fc.constantFrom(...roles) }),
      reason: fc.constantFrom('', 'weather'),
      met: fc.subarray([...everything]),
    });
    fc.assert(
      fc.property(fc.constantFrom(...states), fc.array(anyStep, { maxLength: 12 }), (start, steps) => {
        let now = flight(start);
        for (const each of steps) {
          const answer = nextState(now, each);
          if (answer.kind === 'refused') {
            expect(answer.words).toMatch(/^F05.+\.$/);
            continue;
          }
          expect(answer.flight.version).toBeGreaterThanOrEqual(now.version);
          if (later.includes(now.state)) expect(later).toContain(answer.flight.state);
          if (answer.flight.needsDecision !== null)
            expect(['offered', 'approved', 'given']).toContain(answer.flight.state);
          now = answer.flight;
        }
      }),
    );
  });
});
