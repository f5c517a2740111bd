import { describe, expect, it } from 'vitest';
import {
  at,
  corrected,
  drawn,
  filled,
  flownOut,
  leftAt,
  loaded,
  ml,
  received,
  written,
} from './example-movements.js';
import type { Movement } from './movement.js';
import { raisedIn } from './raised-in.js';
import { applyMovement, asItWasAt, asKnownAt, replay } from './replay.js';

const kindsRaised = (movements: readonly Movement[]) => raisedIn(replay(movements)).map(({ kind }) => kind);
const drum = (movements: readonly Movement[], number = '0451') => replay(movements).drums.get(number)!;

describe('where a drum is', () => {
  it('a drum filled, loaded and left at a strip stands there, and nothing is raised', () => {
    const state = replay(flownOut('0451'));
    expect(state.drums.get('0451')).toMatchObject({
      where: { kind: 'at', place: 'STRIP' },
      content: 'filled sealed',
      millilitres: ml(200),
    });
    expect([...state.balances.keys()]).toEqual(['STRIP']);
    expect(raisedIn(state)).toEqual([]);
  });

  it('a loaded drum is aboard its flight and stands at no place', () => {
    const state = replay(flownOut('0451').slice(0, 2));
    expect(state.drums.get('0451')!.where).toEqual({ kind: 'aboard', flight: 'F05', leg: 1, from: 'BASE' });
    expect(state.balances.size).toBe(0);
  });

  it('the movement that happened last decides, though another was written and received later', () => {
    const late = loaded('0451', '06:00', { means: 'paper', writtenAt: at('17:00'), receivedAt: at('18:00') });
    expect(drum([flownOut('0451')[2]!, flownOut('0451')[0]!, late]).where).toMatchObject({ place: 'STRIP' });
  });

  it('of two that happened at one moment, the one written later decides', () => {
    const sling = (to: string, writtenAt: string): Movement => ({
      ...written(`sling-${to}`, '09:00', { writtenAt: at(writtenAt) }),
      kind: 'slung',
      drum: '0451',
      helicopter: 'H1',
      from: 'STRIP',
      to,
    });
    const both = [sling('PAD', '09:30'), sling('RIDGE', '09:10')];
    expect(drum([...flownOut('0451'), ...both]).where).toMatchObject({ place: 'PAD' });
  });

  it('of two written at one moment too, its life gives the order: loaded, then brought home, whatever their ids', () => {
    const minute = { happenedAt: at('06:02'), writtenAt: at('06:02') };
    const out = loaded('0451', '06:02', { id: 'z', ...minute });
    const home: Movement = { ...out, id: 'a', kind: 'brought home', place: 'BASE' };
    for (const list of [
      [out, home],
      [home, out],
    ]) {
      const movements = [filled('0451', '05:00'), ...list];
      expect(drum(movements).where).toEqual({ kind: 'at', place: 'BASE' });
      expect(kindsRaised(movements)).toEqual([]);
    }
  });

  it('held and released at one moment it is held: in doubt a drum is not used', () => {
    const of = { drum: '0451' };
    const hold: Movement = { ...written('a', '08:00'), kind: 'held', of, reason: 'water' };
    const release: Movement = { ...hold, id: 'z', kind: 'released', second: 'quality' };
    expect(drum([...flownOut('0451'), hold, release]).fitness.held).toMatchObject({ reason: 'water' });
  });

  it('a lost drum is nowhere, and is found where it is found', () => {
    const lost: Movement = { ...written('lost', '08:00'), kind: 'lost', drum: '0451', place: 'STRIP' };
    const found: Movement = { ...written('found', '10:00'), kind: 'found', drum: '0451', place: 'PAD' };
    expect(drum([...flownOut('0451'), lost]).where).toEqual({ kind: 'unknown', lastSeenAt: 'STRIP' });
    expect(drum([...flownOut('0451'), lost, found]).where).toEqual({ kind: 'at', place: 'PAD' });
    expect(kindsRaised([...flownOut('0451'), lost, found])).toEqual([]);
  });
});

describe('one event reported several times', () => {
  it('the same report sent five times changes the stock once', () => {
    const five = Array.from({ length: 5 }, () => flownOut('0451')).flat();
    expect(replay(five)).toEqual(replay(flownOut('0451')));
  });

  it('pilot and second phone report one delivery: one movement, two witnesses', () => {
    const second = leftAt('0451', '07:20', { id: 'left-again', by: 'loader', receivedAt: at('19:00') });
    const { where, history, steps, raised } = drum([...flownOut('0451'), second]);
    expect(where).toMatchObject({ place: 'STRIP' });
    expect(history.find(({ movement }) => movement.id === 'left-again')).toMatchObject({
      sameAs: 'left-0451',
      witnesses: ['pilot', 'loader'],
    });
    expect(steps).toHaveLength(3);
    expect(raised).toEqual([]);
  });

  it('where the two differ, the first written stands and the difference is raised', () => {
    const second = leftAt('0451', '07:20', {
      id: 'left-again',
      by: 'loader',
      place: 'PAD',
      condition: 'damaged',
    });
    const { where, fitness, raised } = drum([...flownOut('0451'), second]);
    expect(where).toMatchObject({ place: 'STRIP' });
    expect(fitness.held).toBeNull();
    expect(raised).toMatchObject([
      { kind: 'reports differ', drum: '0451', movements: ['left-0451', 'left-again'] },
    ]);
  });

  it('draws are never merged: two alike both count, and are raised', () => {
    const twice = [drawn('0451', '09:00', 60), drawn('0451', '09:40', 60, { by: 'pilot' })];
    const movements = [...flownOut('0451'), ...twice];
    expect(drum(movements).millilitres).toBe(ml(80));
    expect(kindsRaised(movements)).toEqual(['draws look alike']);
  });

  it('one draw of 450 L out of three drums is one report; a second person who writes the same down is not', () => {
    const full = [...flownOut('0451'), ...flownOut('0452'), ...flownOut('0453')];
    const outOf = (by: string) => [
      drawn('0451', '09:00', 200, { by }),
      drawn('0452', '09:00', 200, { by }),
      drawn('0453', '09:00', 50, { by }),
    ];
    expect(kindsRaised([...full, ...outOf('crew H1')])).toEqual([]);
    const again = [...full, ...outOf('crew H1'), drawn('0451', '09:00', 200, { id: 'again', by: 'pilot' })];
    expect(kindsRaised(again)).toContain('draws look alike');
  });

  it('draws of other litres, another place or hours apart do not look alike', () => {
    const apart = [drawn('0451', '09:00', 60), drawn('0451', '09:40', 50), drawn('0451', '11:30', 60)];
    expect(kindsRaised([...flownOut('0451'), ...apart])).toEqual([]);
  });
});

describe('a mistyped number', () => {
  it('0999 left at the strip is an unknown drum, not an empty one: its content is unknown, and it is raised', () => {
    const state = replay([...flownOut('0451'), leftAt('0999', '07:00')]);
    expect(state.balances.get('STRIP')).toMatchObject({ sealedDrums: 1, emptyDrums: 0 });
    expect(state.drums.get('0999')!.where).toEqual({ kind: 'at', place: 'STRIP' });
    expect(raisedIn(state).map(({ what }) => what)).toEqual([
      expect.stringContaining('unknown drum 0999, not counted as empty'),
    ]);
  });

  it('a drum that came into the book as empty is counted as empty', () => {
    const empty = received('0452', '05:00', { content: 'clean empty', millilitres: ml(0) });
    expect(replay([empty]).balances.get('STRIP')).toMatchObject({ emptyDrums: 1 });
  });
});

describe('what is in a drum', () => {
  it('the first draw opens the drum; the last leaves it empty with residue', () => {
    const once = [...flownOut('0451'), drawn('0451', '09:00', 150)];
    expect(drum(once)).toMatchObject({ content: 'part used', openedAt: at('09:00'), millilitres: ml(50) });
    expect(drum([...once, drawn('0451', '12:00', 50)])).toMatchObject({
      content: 'empty with residue',
      millilitres: 0,
    });
  });

  it('more drawn than was in it leaves nothing, not less, and is raised', () => {
    const movements = [...flownOut('0451'), drawn('0451', '09:00', 230)];
    expect(drum(movements).millilitres).toBe(0);
    expect(kindsRaised(movements)).toEqual(['more than was in it']);
  });

  it('fuel pumped over leaves one drum and is in the other, with its batch', () => {
    const empty = received('0900', '05:00', { content: 'clean empty', millilitres: ml(0), batch: 'none' });
    const pumped: Movement = {
      ...written('pump', '09:00'),
      kind: 'transferred',
      drum: '0451',
      place: 'STRIP',
      into: '0900',
      batch: 'J27',
      millilitres: ml(80),
    };
    const state = replay([...flownOut('0451'), empty, pumped]);
    expect(state.drums.get('0451')).toMatchObject({ content: 'part used', millilitres: ml(120) });
    expect(state.drums.get('0900')).toMatchObject({
      content: 'part used',
      millilitres: ml(80),
      batch: 'J27',
    });
    expect(state.balances.get('STRIP')).toMatchObject({ partUsedDrums: 2, bookMillilitres: ml(200) });
  });

  it('a seal found broken opens the drum and holds it', () => {
    const home: Movement = {
      ...loaded('0451', '08:00'),
      kind: 'brought home',
      id: 'home',
      condition: 'seal broken',
    };
    const state = drum([...flownOut('0451').slice(0, 2), home]);
    expect(state).toMatchObject({ where: { place: 'BASE' }, content: 'part used', millilitres: ml(200) });
    expect(state.fitness.held).toMatchObject({ reason: 'seal broken', by: 'pilot' });
  });
});

describe('a report that contradicts the book is accepted and raised', () => {
  const hold: Movement = { ...written('hold', '05:30'), kind: 'held', of: { drum: '0451' }, reason: 'water' };
  const batchHold: Movement = {
    ...written('hold', '05:30'),
    kind: 'held',
    of: { batch: 'J27' },
    reason: 'recall',
  };

  it.each<[string, readonly Movement[], string]>([
    [
      'drawn at a pad where the drum never was',
      [...flownOut('0451'), drawn('0451', '09:00', 50, { place: 'PAD' })],
      'not there',
    ],
    ['a number that nobody filled', [leftAt('0999', '07:00')], 'not in the book'],
    [
      'loaded, filled an hour later',
      [loaded('0451', '04:00'), filled('0451', '05:00')],
      'loaded before filled',
    ],
    [
      'left at a strip without being loaded',
      [filled('0451', '05:00'), leftAt('0451', '07:00')],
      'not aboard',
    ],
    [
      'loaded on a second flight',
      [
        filled('0451', '05:00'),
        loaded('0451', '06:00'),
        loaded('0451', '06:10', { id: 'again', flight: 'F06' }),
      ],
      'aboard two flights',
    ],
    [
      'a held drum loaded outbound',
      [filled('0451', '05:00'), hold, loaded('0451', '06:00')],
      'held drum loaded',
    ],
    [
      'a drum of a held batch loaded',
      [filled('0451', '05:00'), loaded('0451', '06:00'), batchHold],
      'held drum loaded',
    ],
    [
      'filled while there was fuel in it',
      [filled('0451', '05:00'), filled('0451', '06:00', { id: 'again' })],
      'filled over fuel',
    ],
    [
      'received twice',
      [received('0451', '05:00'), received('0451', '06:00', { id: 'again' })],
      'already in the book',
    ],
    [
      'a phone three hours ahead',
      [filled('0451', '05:00'), loaded('0451', '09:00', { receivedAt: at('06:00') })],
      'clock ahead',
    ],
  ])('%s', (_, movements, kind) => {
    expect(kindsRaised(movements)).toContain(kind);
    expect(replay(movements).movements.size).toBe(movements.length);
  });

  it('a batch held after its drum had left is raised on the loading, and no more once the hold is corrected', () => {
    const recall: Movement = { ...batchHold, ...written('hold', '05:30', { receivedAt: at('20:00') }) };
    const held = applyMovement(replay([filled('0451', '05:00'), loaded('0451', '06:00')]), recall);
    expect(raisedIn(held).map(({ kind }) => kind)).toEqual(['held drum loaded']);
    expect(raisedIn(applyMovement(held, corrected('hold', '21:00')))).toEqual([]);
  });

  it('a held drum may be carried home', () => {
    const carried = loaded('0451', '08:00', { id: 'home', place: 'STRIP', flight: 'F06', bound: 'home' });
    expect(kindsRaised([...flownOut('0451'), { ...hold, ...written('hold', '07:30') }, carried])).toEqual([]);
  });

  it('each raised thing says what and what next', () => {
    const [raised] = raisedIn(replay([...flownOut('0451'), drawn('0451', '09:00', 50, { place: 'PAD' })]));
    expect(raised).toMatchObject({ drum: '0451', place: 'PAD', movements: ['draw-0451-09:00'] });
    expect(raised!.what).toContain('where the book has the drum at STRIP');
    expect(raised!.whatNext).not.toBe('');
  });
});

describe('corrections', () => {
  it('after a correction the figures are as before it, and both entries still show', () => {
    const wrong = drawn('0451', '09:00', 60);
    const { millilitres, content, history } = drum([
      ...flownOut('0451'),
      wrong,
      corrected(wrong.id, '10:00'),
    ]);
    expect([millilitres, content]).toEqual([ml(200), 'filled sealed']);
    expect(history.at(-1)).toMatchObject({ movement: wrong, reversedBy: [`correct-${wrong.id}`] });
  });

  it('a correction of the correction brings the entry back', () => {
    const wrong = drawn('0451', '09:00', 60);
    const undone = corrected(`correct-${wrong.id}`, '11:00');
    expect(drum([undone, ...flownOut('0451'), wrong, corrected(wrong.id, '10:00')]).millilitres).toBe(
      ml(140),
    );
  });

  it('a correction that arrives before its entry is raised, and counts once the entry comes', () => {
    const wrong = drawn('0451', '09:00', 60);
    const early = [...flownOut('0451'), corrected(wrong.id, '10:00')];
    expect(kindsRaised(early)).toEqual(['corrects an unknown movement']);
    const state = applyMovement(replay(early), wrong);
    expect(state.drums.get('0451')!.millilitres).toBe(ml(200));
    expect(raisedIn(state)).toEqual([]);
  });
});

describe('a drum whose number cannot be read', () => {
  const unread = leftAt('?-7', '07:00');
  const join: Movement = { ...written('join', '12:00'), kind: 'joined', provisional: '?-7', drum: '0451' };
  const sentOut = flownOut('0451').slice(0, 2);

  it('stands under its provisional number until it is joined to the real one', () => {
    const state = replay([...sentOut, unread]);
    expect([...state.drums.keys()].sort()).toEqual(['0451', '?-7']);
    expect(raisedIn(state).map(({ kind }) => kind)).toEqual(['not in the book']);
  });

  it('is one drum with the whole story after the join', () => {
    const state = replay([unread, join, ...sentOut]);
    expect([...state.drums.keys()]).toEqual(['0451']);
    expect(state.drums.get('0451')).toMatchObject({ where: { place: 'STRIP' }, alsoKnownAs: ['?-7'] });
    expect(raisedIn(state)).toEqual([]);
  });

  it('is two drums again when the join is corrected', () => {
    const state = replay([...sentOut, unread, join, corrected('join', '13:00')]);
    expect(state.drums.get('0451')!.where.kind).toBe('aboard');
    expect(state.drums.get('?-7')!.where).toEqual({ kind: 'at', place: 'STRIP' });
  });

  it('joined to two numbers: the first written stands, and it is raised', () => {
    const other: Movement = { ...join, id: 'join-2', writtenAt: at('12:30'), drum: '0452' };
    const state = replay([other, ...sentOut, unread, join]);
    expect(state.drums.get('0451')!.alsoKnownAs).toEqual(['?-7']);
    expect(raisedIn(state).map(({ kind }) => kind)).toEqual(['joined twice']);
  });
});

describe('the picture of another moment', () => {
  const late = leftAt('0451', '07:00', { receivedAt: at('18:00') });
  const movements = [...flownOut('0451').slice(0, 2), late];

  it('as known at noon the drum is aboard; as it was at noon it stands at the strip', () => {
    expect(asKnownAt(movements, at('12:00')).drums.get('0451')!.where.kind).toBe('aboard');
    expect(asItWasAt(movements, at('12:00')).drums.get('0451')!.where.kind).toBe('at');
    expect(asItWasAt(movements, at('06:30')).drums.get('0451')!.where.kind).toBe('aboard');
  });

  it('as it was is told with the corrections of today', () => {
    const wrong = drawn('0451', '09:00', 60);
    const all = [...flownOut('0451'), wrong, corrected(wrong.id, '15:00')];
    expect(asItWasAt(all, at('12:00')).drums.get('0451')!.millilitres).toBe(ml(200));
    expect(asKnownAt(all, at('12:00')).drums.get('0451')!.millilitres).toBe(ml(140));
  });
});
