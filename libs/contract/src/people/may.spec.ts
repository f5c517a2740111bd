import type { FlightRole } from '@drumline/planning';
import { describe, expect, it } from 'vitest';
import { may, permissionOf } from './may.js';
import type { Permission } from './permission.js';
import { type PermittedAct, permittedActs } from './permission-table.js';
import { type Role, roles } from './role.js';

const columns: readonly Role[] = [
  'operations manager',
  'dispatcher',
  'pilot',
  'helicopter crew',
  'storekeeper',
  'fuel quality',
  'accounts',
  'engineering',
  'set-up',
  'field leader',
];

/** v view, e enter, a decide, 2 a second person, "own" only, - nothing; a limit in brackets. */
const matrix = `
run plan              | a  | a (from now, inside the week) | -     | -     | -   | v  | v  | v | -              | -
approve flight        | a  | a               | v own           | v own  | v   | v  | v  | - | -              | -
close flight          | a  | v               | v own           | v own  | -   | -  | a  | - | -              | -
let go flight         | a  | a               | -               | -      | -   | -  | -  | - | -              | -
assign crew           | v  | a               | v own           | v own  | -   | -  | -  | - | -              | -
report surface        | e  | e               | e               | e      | -   | v  | -  | - | -              | -
strip limits          | a2 | v               | v               | v      | v   | a2 | -  | - | e (as a draft) | -
load                  | v  | e               | a (as commander) | a own | e   | v  | -  | - | -              | -
delivery              | v  | e (by radio)    | e               | e      | e (at base) | v | v | - | -      | -
draw                  | v  | e (by radio)    | e               | e      | e   | v  | v  | - | -              | -
fill                  | v  | v               | -               | -      | e   | v  | v  | - | -              | -
count                 | e  | e               | e               | e      | e   | e  | -  | - | -              | -
close difference case | a2 | -               | -               | -      | e   | a2 | v  | - | -              | -
look at raised        | e  | e               | -               | -      | e   | e  | v  | - | -              | -
hand over             | e  | e               | -               | -      | -   | -  | -  | - | -              | -
hold                  | a  | a               | e (one drum)    | e (one drum) | e (one drum) | a | v | - | - | -
release hold          | -  | -               | -               | -      | -   | a2 | -  | - | -              | -
medevac draw          | e  | e               | e               | e      | e   | v  | v  | - | -              | -
plan reserve          | a2 | a2              | -               | -      | -   | v  | v  | - | -              | -
programme             | a  | e               | v own           | v own  | -   | v  | v  | v | -              | -
crew records          | a  | e               | v own           | v own  | -   | v  | -  | - | e              | -
policy                | a2 | v               | v               | v      | v   | a2 | -  | - | e (as a draft) | -
accept plan           | a  | a (inside the week) | -           | -      | -   | v  | v  | v | -              | -
audit                 | v  | -               | -               | -      | -   | v  | -  | - | -              | -
import and export     | a  | e (export)      | -               | -      | -   | -  | e (export) | - | e      | -
minimums              | a  | v               | v               | v      | v   | v  | -  | - | -              | -
passenger approval    | a2 | -               | -               | -      | -   | a2 | -  | - | -              | -
aircraft availability | a  | v               | v               | v      | -   | -  | -  | e | -              | -
prices                | a2 | -               | -               | -      | -   | -  | e2 | - | -              | -
people                | a  | -               | -               | -      | -   | -  | -  | - | e              | -
own programme and litres | - | -             | -               | -      | -   | -  | -  | - | -              | v own
cache levels in words | -  | -               | -               | -      | -   | -  | -  | - | -              | v
`
  .trim()
  .split('\n')
  .map((line) => line.split('|').map((text) => text.trim()));

const cells = matrix.flatMap(([act, ...row]) =>
  row.map((text, column) => [act as PermittedAct, columns[column]!, text] as const),
);

const levelOf = { '-': 'none', v: 'view', e: 'enter', a: 'decide' } as const;

const read = (text: string): Permission => ({
  level: levelOf[text[0] as keyof typeof levelOf],
  own: text.includes('own'),
  second: text.includes('2'),
  limit: (/\((.+)\)/.exec(text)?.[1] ?? null) as Permission['limit'],
});

describe('the permission table', () => {
  it('has every act and every role', () => {
    expect(matrix.map(([act]) => act)).toEqual(permittedActs);
    expect(columns).toEqual(roles);
    expect(cells).toHaveLength(permittedActs.length * roles.length);
  });

  it.each(cells)('%s, %s: %s', (act, role, text) => {
    expect(permissionOf(role, act)).toEqual(read(text));
  });

  it.each(cells)('%s, %s: %s is what is allowed, and no more', (act, role, text) => {
    const { level, own, second, limit } = read(text);
    const ranks = ['none', 'view', 'enter', 'decide'];
    const within = limit === null ? [] : [limit];
    for (const to of ['view', 'enter', 'decide'] as const) {
      const asked = may(role, act, { to, own: true, within });
      if (ranks.indexOf(to) > ranks.indexOf(level)) expect(asked.kind).toBe('refused');
      else expect(asked.kind).toBe(second && to !== 'view' ? 'needs a second person' : 'allowed');
      if (own) expect(may(role, act, { to, within }).kind).toBe('refused');
      if (limit !== null && to !== 'view') expect(may(role, act, { to, own: true }).kind).toBe('refused');
    }
  });
});

describe('two persons', () => {
  it('an adjustment needs two people who may both decide it', () => {
    const asked = (second: Role | null) =>
      may('operations manager', 'close difference case', { to: 'decide', second }).kind;
    expect(asked(null)).toBe('needs a second person');
    expect(asked('storekeeper')).toBe('needs a second person');
    expect(asked('fuel quality')).toBe('allowed');
  });

  it('a medevac draw needs nobody’s leave', () => {
    expect(may('pilot', 'medevac draw', { to: 'enter' })).toEqual({ kind: 'allowed' });
  });
});

describe('a refusal says what is open and whom to ask', () => {
  it.each([
    [
      may('pilot', 'let go flight', { to: 'decide' }),
      'pilot: let go flight is not open to you. Ask: operations manager or dispatcher.',
    ],
    [
      may('dispatcher', 'minimums', { to: 'decide' }),
      'dispatcher: you may view in minimums, not decide. Ask: operations manager.',
    ],
    [may('pilot', 'hold', { to: 'enter' }), 'pilot: hold is open one drum only.'],
    [may('pilot', 'crew records', { to: 'view' }), 'pilot: crew records is open for your own only.'],
  ])('%#', (answer, words) => {
    expect(answer).toEqual({ kind: 'refused', words });
  });
});

it('everyone who takes a flight further has a role here', () => {
  const persons: Record<Exclude<FlightRole, 'planner'>, Role> = {
    'operations manager': 'operations manager',
    dispatcher: 'dispatcher',
    pilot: 'pilot',
    'helicopter crew': 'helicopter crew',
    storekeeper: 'storekeeper',
    accounts: 'accounts',
  };
  expect(roles).toEqual(expect.arrayContaining(Object.values(persons)));
});
