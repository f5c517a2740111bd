import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isUnheardOf } from './balance.js';
import { at, ml, written } from './example-movements.js';
import { ledgerChange } from './ledger-change.js';
import type { DrumState, LedgerState } from './ledger-state.js';
import { isReport, type Report } from './leg-report.js';
import type { Movement } from './movement.js';
import type { Raised } from './raised.js';
import { raisedIn } from './raised-in.js';
import { applyMovement, asKnownAt, replay } from './replay.js';
import { subjectsOf } from './subjects.js';

const number = fc.constantFrom('1', '2', '3', '?');
const place = fc.constantFrom('BASE', 'STRIP', 'PAD');
const clock = fc.integer({ min: 4, max: 20 }).map((hour) => `${String(hour).padStart(2, '0')}:00`);
const amount = fc.integer({ min: 0, max: 220 }).map(ml);
const batch = fc.constantFrom('J27', 'K27');
const holdOf = fc.oneof(fc.record({ drum: number }), fc.record({ batch }));
const condition = fc.constantFrom('sound' as const, 'seal broken' as const, 'damaged' as const);
const onLeg = {
  drum: number,
  place,
  flight: fc.constantFrom('F05', 'F06'),
  leg: fc.constantFrom(1, 2),
  condition,
  foundMillilitres: fc.option(amount),
};
const weights = { tareKg: fc.constant(20), grossKg: fc.constant(180) };
const event = fc.oneof(
  fc.record({
    kind: fc.constant('received'),
    drum: number,
    place,
    batch,
    content: fc.constant('filled sealed'),
    millilitres: amount,
    ...weights,
  }),
  fc.record({ kind: fc.constant('filled'), drum: number, place, batch, millilitres: amount, ...weights }),
  fc.record({ kind: fc.constant('loaded'), ...onLeg, bound: fc.constantFrom('out', 'home') }),
  fc.record({ kind: fc.constant('left at'), ...onLeg }),
  fc.record({ kind: fc.constant('brought home'), ...onLeg }),
  fc.record({ kind: fc.constantFrom('opened', 'lost', 'found'), drum: number, place }),
  fc.record({
    kind: fc.constant('drawn'),
    drum: number,
    place,
    millilitres: amount,
    into: fc.constant('H1'),
    programme: fc.constant('P1'),
    leftMillilitres: fc.option(amount),
  }),
  fc.record({
    kind: fc.constantFrom('dipped', 'spilled'),
    drum: number,
    place,
    millilitres: amount,
    cause: fc.constant('bung'),
  }),
  fc.record({
    kind: fc.constant('transferred'),
    drum: number,
    into: number,
    place,
    batch,
    millilitres: amount,
  }),
  fc.record({
    kind: fc.constant('slung'),
    drum: number,
    helicopter: fc.constant('H1'),
    from: place,
    to: place,
  }),
  fc.record({
    kind: fc.constant('counted'),
    place,
    method: fc.constant('dip'),
    seenFrom: fc.constant('ground'),
    millilitres: amount,
    sealedDrums: fc.constant(0),
    openDrums: fc.constant(0),
    emptyDrums: fc.constant(0),
  }),
  fc.record({ kind: fc.constant('held'), of: holdOf, reason: fc.constant('water') }),
  fc.record({
    kind: fc.constant('released'),
    of: holdOf,
    reason: fc.constant('dry'),
    second: fc.constantFrom('a', 'b'),
  }),
  fc.record({ kind: fc.constant('joined'), provisional: number, drum: number }),
  fc.record({
    kind: fc.constant('corrected'),
    corrects: fc.integer({ min: 0, max: 14 }).map((index) => `m${index}`),
    reason: fc.constant('slip'),
  }),
);
/** Movements of few drums, at few moments, written and received in any order. */
const movements: fc.Arbitrary<readonly Movement[]> = fc
  .array(fc.record({ event, happened: clock, wrote: clock, arrived: clock, by: fc.constantFrom('a', 'b') }), {
    maxLength: 15,
  })
  .map((rows) =>
    rows.map(
      (row, index) =>
        ({
          ...written(`m${index}`, row.happened, {
            writtenAt: at(row.wrote),
            receivedAt: at(row.arrived),
            by: row.by,
          }),
          ...row.event,
        }) as Movement,
    ),
  );
const shuffled = movements.chain((list) =>
  fc.tuple(fc.constant(list), fc.shuffledSubarray([...list], { minLength: list.length })),
);

const figures = ({ history: _, raised: __, steps: ___, alsoKnownAs: ____, ...rest }: DrumState) => rest;
const heard = (state: LedgerState) =>
  [...state.drums.values()]
    .filter((drum) => drum.steps.length > 0)
    .map(figures)
    .sort((a, b) => (a.number < b.number ? -1 : 1));

it('one movement after another gives the ledger that a replay of all of them gives', () => {
  fc.assert(
    fc.property(movements, (list) => {
      expect(list.reduce(applyMovement, replay([]))).toEqual(replay(list));
    }),
    { numRuns: 300 },
  );
});

it('the order of arrival does not matter', () => {
  fc.assert(
    fc.property(shuffled, ([list, other]) => {
      const [state, again] = [replay(list), other.reduce(applyMovement, replay([]))];
      expect(again).toEqual(state);
      expect(raisedIn(again)).toEqual(raisedIn(state));
    }),
    { numRuns: 300 },
  );
});

it('a movement that comes again changes nothing', () => {
  fc.assert(
    fc.property(shuffled, ([list, other]) => {
      const state = replay(list);
      expect(other.reduce(applyMovement, state)).toBe(state);
    }),
  );
});

it('every drum that stands at a place and whose content somebody has said is in the balance of that place, and in no other', () => {
  fc.assert(
    fc.property(movements, (list) => {
      const { drums, balances } = replay(list);
      const standing = [...drums.values()].filter(({ where }) => where.kind === 'at');
      const all = [...balances.values()];
      const sum = (figure: (balance: (typeof all)[number]) => number) =>
        all.reduce((total, balance) => total + figure(balance), 0);
      const known = standing.filter((drum) => !isUnheardOf(drum));
      expect(sum((each) => each.sealedDrums + each.partUsedDrums + each.emptyDrums)).toBe(known.length);
      expect(sum((each) => each.bookMillilitres)).toBe(
        standing.reduce((total, { millilitres }) => total + millilitres, 0),
      );
    }),
  );
});

const isSameFlight = (one: Movement, { flight }: Report): boolean => isReport(one) && one.flight === flight;

it('after a correction the figures are as if the corrected movement had never been written', () => {
  fc.assert(
    fc.property(movements, fc.nat(), (list, pick) => {
      const plain = list.filter(({ kind }) => kind !== 'corrected');
      const wrong = plain[pick % Math.max(1, plain.length)];
      fc.pre(wrong !== undefined && wrong.kind !== 'joined');
      // What else is reported of that flight is read anew by a rule of its own: corrected-reports.spec.ts.
      fc.pre(!isReport(wrong) || plain.every((other) => other === wrong || !isSameFlight(other, wrong)));
      const correction: Movement = {
        ...written('c', '20:00'),
        kind: 'corrected',
        corrects: wrong.id,
        reason: 'slip',
      };
      const corrected = replay([...plain, correction]);
      const without = replay(plain.filter((movement) => movement !== wrong));
      expect(heard(corrected)).toEqual(heard(without));
      expect(corrected.balances).toEqual(without.balances);
      expect(corrected.movements.get(wrong.id)).toEqual(wrong);
    }),
    { numRuns: 300 },
  );
});

it('the change of one movement, read from its own drums alone, is the change in the whole ledger', () => {
  fc.assert(
    fc.property(movements, (list) => {
      fc.pre(list.length > 0);
      const [last, ...earlier] = [...list].reverse();
      const before = replay(earlier);
      const slice = replay(sliceFor(before, last!));
      const whole = ledgerChange(before, applyMovement(before, last!));
      const part = ledgerChange(slice, applyMovement(slice, last!));
      expect(part.balances).toEqual(whole.balances);
      expect(part.drums).toEqual(whole.drums);
      expect(part.drumsGone).toEqual(whole.drumsGone);
    }),
    { numRuns: 300 },
  );
});

it('what is raised, kept movement by movement, is what the whole ledger raises', () => {
  fc.assert(
    fc.property(movements, (list) => {
      const kept = new Map<string, Raised>();
      const last = list.reduce((before, movement) => {
        const after = applyMovement(before, movement);
        const { raised, raisedGone } = ledgerChange(before, after);
        for (const id of raisedGone) kept.delete(id);
        for (const each of raised) kept.set(each.id, each);
        return after;
      }, replay([]));
      expect([...kept.values()].sort((a, b) => (a.id < b.id ? -1 : 1))).toEqual(raisedIn(last));
    }),
    { numRuns: 300 },
  );
});

/** What a server loads to append one movement: the groups of its drums, their batches, and every correction. */
function sliceFor(state: LedgerState, movement: Movement): Movement[] {
  const all = [...state.movements.values()];
  const find = (id: string) => (id === movement.id ? movement : state.movements.get(id));
  const subjects = subjectsOf(movement, find);
  const numbers = new Set(subjects.drums);
  for (const drum of state.drums.values())
    if (drum.history.some((entry) => 'batch' in entry.movement && entry.movement.batch === subjects.batch))
      numbers.add(drum.number);
  const linked = new Set([...numbers].flatMap((each) => state.groups.get(each)?.numbers ?? [each]));
  return all.filter(
    (each) =>
      each.kind === 'corrected' ||
      subjectsOf(each, find).batch !== null ||
      subjectsOf(each, find).drums.some((drum) => linked.has(drum)),
  );
}

it('as known at the end of the day is what is known', () => {
  fc.assert(
    fc.property(movements, (list) => {
      expect(asKnownAt(list, at('23:59'))).toEqual(replay(list));
    }),
  );
});
