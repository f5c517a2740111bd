import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Answer, Client } from '../testing/client.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
let setUp: Client;
beforeAll(async () => {
  server = await createTestServer();
  setUp = await server.as('set-up');
});
afterAll(() => server.close());

interface Faulty {
  readonly faults: readonly { readonly path: string; readonly problem: string }[];
}

interface Listed {
  readonly removed: number;
  readonly notInFile: readonly string[];
}

const send = <Body>(who: Client, file: string, text: string, query = ''): Promise<Answer<Body>> =>
  who.send<Body>('POST', `/api/csv/${file}${query}`, text, { headers: { 'Content-Type': 'text/csv' } });

const fileOf = async (name: string): Promise<string> => {
  const { status, body, headers } = await setUp.get<string>(`/api/csv/${name}`);
  expect([status, headers.get('Content-Type')]).toEqual([200, 'text/csv; charset=utf-8']);
  return body;
};

const faultsOf = async (file: string, text: string): Promise<string[]> => {
  const { status, body } = await send<Faulty>(setUp, file, text, '?dryRun=true');
  expect(status).toBe(422);
  return body.faults.map(({ path, problem }) => `${path}: ${problem}`);
};

const taskHeadings = 'date,helicopter,programme,place,hours,litres,note';
const limitHeadings = 'place,type,takeoffLb,landingLb,whenSoft,softTakeoffLessLb,softLandingLessLb,reference';
const drumHeadings = 'number,place,batch,content,litres,openedAt,tareKg,grossKg,happenedAt';
const drumLine = (number: string, place = 'XALD', batch = 'J27-041') =>
  `${number},${place},${batch},filled sealed,200,,19.7,179.1,2027-06-14T07:00Z`;

describe('a CSV file', () => {
  it.each(['strip-limits', 'helicopter-tasks'])(
    'of %s that was written is read back as it is',
    async (name) => {
      const text = await fileOf(name);
      const lines = text.trimEnd().split('\n').length - 1;
      const { status, body } = await send(setUp, name, text, '?dryRun=true');
      expect(lines).toBeGreaterThan(5);
      expect([status, body]).toEqual([
        200,
        { dryRun: true, added: 0, changed: 0, unchanged: lines, removed: 0, notInFile: [], doubts: [] },
      ]);
    },
  );

  it('of drums has every drum where it stands', async () => {
    const text = await fileOf('drums');
    expect(text.split('\n')[0]).toBe(drumHeadings);
    expect(text.trimEnd().split('\n')).toHaveLength(187);
  });

  it('that is refused says every fault by its line and column', async () => {
    const faults = await faultsOf(
      'helicopter-tasks',
      [
        taskHeadings,
        '2027-06-20,H1,P1,XESK,3,336,',
        '2027-06-20,H1,P1,XESK,three,-5,',
        '2027-06-21,H9,P1,XESK,3,336,',
        '2027-06-21,H1,P1,XESK,3',
      ].join('\n'),
    );
    expect(faults).toEqual([
      expect.stringMatching(/^line 3, hours: "three" is not a number/),
      expect.stringMatching(/^line 3, litres: -5 is too small/),
      expect.stringMatching(/^line 4, helicopter: /),
      expect.stringMatching(/^line 5: the line has 5 cells, and there are 7 headings/),
    ]);
  });

  it('says of an empty cell that it is empty, and of a day in another form one thing: how an instant is written', async () => {
    const line = drumLine('9301').replace('J27-041', '').replace('2027-06-14T07:00Z', '14.6.2027');
    const { body } = await send<{ faults: readonly object[] }>(
      setUp,
      'drums',
      [drumHeadings, line].join('\n'),
      '?dryRun=true',
    );
    expect(body.faults).toEqual([
      { path: 'line 2, batch', problem: 'the cell is empty.', remedy: 'Fill it in.' },
      {
        path: 'line 2, happenedAt',
        problem: '"14.6.2027" does not fit:',
        remedy: 'an instant is written like 2027-06-14T06:00Z, in UTC, from 1900 to 2199.',
      },
    ]);
  });

  it('with wrong headings, a quotation mark left open, or nothing in it is said to be so', async () => {
    expect(await faultsOf('strip-limits', 'place,type,takeoffKg\nXLOR,A,1')).toEqual([
      'line 1, takeoffLb: this column is missing.',
      'line 1, landingLb: this column is missing.',
      'line 1, reference: this column is missing.',
      'line 1, takeoffKg: this column is not known.',
    ]);
    expect(await faultsOf('strip-limits', `${limitHeadings}\nXLOR,"A,1`)).toEqual([
      expect.stringMatching(/^line 2: the line cannot be taken apart/),
    ]);
    expect(await faultsOf('strip-limits', '\n')).toEqual(['line 1: the file is empty.']);
    const lines = [
      'XLOR,A,heavy,1,closed,,,T',
      '',
      'XESK,"A,1',
      'XLOR,B,1,1,closed,,,T',
      'XESK,C,light,1,closed,,,T',
    ];
    expect(await faultsOf('strip-limits', [limitHeadings, ...lines].join('\n'))).toEqual([
      expect.stringMatching(/^line 2, takeoffLb: /),
      expect.stringMatching(/^line 4: the line cannot be taken apart/),
      expect.stringMatching(/^line 6, takeoffLb: /),
    ]);
  });

  it('with the same line twice says so once, at the second one', async () => {
    const [, first = ''] = (await fileOf('strip-limits')).split('\n');
    const [place, type] = first.split(',');
    expect(await faultsOf('strip-limits', [limitHeadings, first, first].join('\n'))).toEqual([
      `line 3: ${type} at ${place} stands in line 2 already.`,
    ]);
  });

  it('calls a cell by the heading of its column in the file', async () => {
    const line = 'XLOR,B,8300,8300,,heavy,300,T';
    expect(await faultsOf('strip-limits', [limitHeadings, line].join('\n'))).toEqual([
      expect.stringContaining('line 2, softTakeoffLessLb: '),
    ]);
  });

  it.each([';', '\t'])(
    'may have %j between its cells, another order of columns, and a mark of its encoding',
    async (sign) => {
      const text = '\ufeffplace;date;helicopter;programme;hours;litres\r\nXESK;2027-06-22;H1;P1;2.5;280\r\n';
      const { status, body } = await send(
        setUp,
        'helicopter-tasks',
        text.replaceAll(';', sign),
        '?dryRun=true',
      );
      expect([status, body]).toEqual([200, expect.objectContaining({ added: 1, changed: 0, unchanged: 0 })]);
    },
  );
});

describe('the helicopter programme by CSV', () => {
  it('adds tasks once, however often it is sent, and a dry run adds none', async () => {
    const before = await fileOf('helicopter-tasks');
    const text = `${taskHeadings}\n2027-06-23,H1,P1,XESK,3,336,"ridge, north"\n2027-06-23,H1,P1,XESK,3,336,"ridge, north"\n`;
    await send(setUp, 'helicopter-tasks', text, '?dryRun=true');
    expect(await fileOf('helicopter-tasks')).toBe(before);
    const first = await send(setUp, 'helicopter-tasks', text);
    expect(first.body).toMatchObject({ dryRun: false, added: 2, changed: 0, unchanged: 0 });
    const again = await send(setUp, 'helicopter-tasks', text);
    expect(again.body).toMatchObject({ dryRun: false, added: 0, changed: 0, unchanged: 2 });
    const added = (await fileOf('helicopter-tasks'))
      .split('\n')
      .filter((line) => line.includes('ridge, north'));
    expect(added).toHaveLength(2);
  });

  it('changes the task whose id it has', async () => {
    const [headings, line = ''] = (await fileOf('helicopter-tasks')).split('\n');
    const longer = line.replace(',4,450,', ',5,560,');
    expect(longer).not.toBe(line);
    const { body } = await send(setUp, 'helicopter-tasks', `${headings}\n${longer}\n`);
    expect(body).toMatchObject({ dryRun: false, added: 0, changed: 1, unchanged: 0 });
  });
});

describe('lines that the file no longer has', () => {
  const headingsAnd = async (file: string, keeps: (line: string) => boolean): Promise<string> => {
    const [headings, ...lines] = (await fileOf(file)).trimEnd().split('\n');
    return `${[headings, ...lines.filter(keeps)].join('\n')}\n`;
  };
  const withoutMar = () => headingsAnd('helicopter-tasks', (line) => !line.includes('XMAR'));

  it('stay, and are listed', async () => {
    const before = await fileOf('helicopter-tasks');
    const { body } = await send<Listed>(setUp, 'helicopter-tasks', await withoutMar());
    expect(body).toMatchObject({ added: 0, changed: 0, removed: 0 });
    expect(body.notInFile).toContain('2027-06-16 H1 at XMAR, P1, 225 L');
    expect(await fileOf('helicopter-tasks')).toBe(before);
  });

  it('are taken out when that is asked for; the dry run lists them and takes out none', async () => {
    const before = await fileOf('helicopter-tasks');
    const file = await withoutMar();
    const tried = await send<Listed>(setUp, 'helicopter-tasks', file, '?dryRun=true&remove=yes');
    expect(tried.body.removed).toBe(tried.body.notInFile.length);
    expect(tried.body.removed).toBeGreaterThan(1);
    expect(await fileOf('helicopter-tasks')).toBe(before);
    const { body } = await send<Listed>(setUp, 'helicopter-tasks', file, '?remove=yes');
    expect(body).toMatchObject({ dryRun: false, removed: tried.body.removed });
    expect(await fileOf('helicopter-tasks')).toBe(file);
    const again = await send<Listed>(setUp, 'helicopter-tasks', file, '?remove=yes');
    expect(again.body).toMatchObject({ removed: 0, notInFile: [] });
  });

  it('of limits go when two people have agreed', async () => {
    const before = await fileOf('strip-limits');
    const file = await headingsAnd('strip-limits', (line) => !line.startsWith('XLOR,C'));
    const manager = await server.as('operations manager');
    const { body } = await send<Listed & { proposal: { id: string; subject: string } }>(
      manager,
      'strip-limits',
      file,
      '?remove=yes',
    );
    expect(body).toMatchObject({ added: 0, changed: 0, removed: 1, notInFile: ['C at XLOR'] });
    expect(body.proposal.subject).toBe('strip limits by CSV: 0 new, 0 changed, 1 removed');
    expect(await fileOf('strip-limits')).toBe(before);
    const second = await server.as('fuel quality');
    await second.put(`/api/proposals/${body.proposal.id}/agreement`, undefined);
    expect(await fileOf('strip-limits')).toBe(file);
  });

  it('drums are not removed by a file', async () => {
    expect((await send(setUp, 'drums', drumHeadings, '?remove=yes')).status).toBe(400);
  });
});

describe('strip limits by CSV', () => {
  it('take two people', async () => {
    const lower = (await fileOf('strip-limits')).replace('6900', '6850');
    const { status, body } = await send<{ proposal: { id: string } }>(
      await server.as('operations manager'),
      'strip-limits',
      lower,
    );
    expect([status, body]).toEqual([200, expect.objectContaining({ changed: 1 })]);
    expect(await fileOf('strip-limits')).not.toBe(lower);
    const second = await server.as('fuel quality');
    expect((await second.put(`/api/proposals/${body.proposal.id}/agreement`, undefined)).status).toBe(200);
    expect(await fileOf('strip-limits')).toBe(lower);
  });
});

describe('drums by CSV', () => {
  it('are received, once each', async () => {
    const text = `${drumHeadings}\n${drumLine('9001')}\n${drumLine('9002')}\n`;
    expect((await send(setUp, 'drums', text)).body).toMatchObject({ added: 2, unchanged: 0 });
    expect((await send(setUp, 'drums', text)).body).toMatchObject({ added: 0, unchanged: 2 });
    const keeper = await server.as('storekeeper');
    expect((await keeper.get('/api/drums/9001')).status).toBe(200);
  });

  it('that are there, stand twice, or name what nobody knows are faults by line', async () => {
    const lines = [
      drumLine('0447'),
      drumLine('9003', 'XNOO'),
      drumLine('9004', 'XALD', 'J00-000'),
      drumLine('9003'),
    ];
    expect(await faultsOf('drums', [drumHeadings, ...lines].join('\n'))).toEqual([
      'line 2, number: drum 0447 is in the ledger already.',
      'line 3, place: there is no place XNOO.',
      'line 4, batch: there is no batch J00-000.',
      'line 5: drum 9003 stands in line 3 already.',
    ]);
  });

  it('are held to what a drum is: open without the day, more than to the brim, lighter than its tare', async () => {
    const part = '9005,XALD,J27-041,part used,100,,19.7,99.7,2027-06-14T07:00Z';
    const over = '9006,XALD,J27-041,filled sealed,240,,19.7,211,2027-06-14T07:00Z';
    const light = '9007,XALD,J27-041,filled sealed,200,,19.7,17.9,2027-06-14T07:00Z';
    expect(await faultsOf('drums', [drumHeadings, part, over, light].join('\n'))).toEqual([
      expect.stringContaining('line 2, openedAt: drum 9005 is part used without the day it was opened'),
      expect.stringContaining('line 3, litres: drum 9006 holds 240 L, more than to the brim'),
      expect.stringContaining('line 4, grossKg: drum 9007 weighs'),
    ]);
  });
});

describe('what looks wrong and keeps no file out is told at the dry run', () => {
  const doubtsOf = async (file: string, text: string): Promise<string[]> => {
    const { status, body } = await send<{ doubts: Faulty['faults'] }>(setUp, file, text, '?dryRun=true');
    expect(status).toBe(200);
    return body.doubts.map(({ path, problem }) => `${path}: ${problem}`);
  };

  it('a limit in kg for lb, by its line; the limits that stand are not doubted again', async () => {
    const text = await fileOf('strip-limits');
    const [headings = '', first = '', ...others] = text.trimEnd().split('\n');
    const [place, type, takeoff] = first.split(',');
    const inKg = first.replace(`,${takeoff},`, `,${Math.round(Number(takeoff) / 2.2046)},`);
    expect(await doubtsOf('strip-limits', [headings, ...others, inKg].join('\n'))).toEqual([
      expect.stringMatching(
        `^line ${others.length + 2}, takeoffLb: .* at ${place} is less than type ${type} weighs empty`,
      ),
    ]);
  });

  it('a task whose litres are no litres', async () => {
    expect(await doubtsOf('helicopter-tasks', `${taskHeadings}\n2027-06-20,H1,P1,XESK,3,900,`)).toEqual([
      expect.stringMatching(/^line 2, litres: 900 L in 3 h; H1 burns about/),
    ]);
  });

  it('a drum of water, or at a place that keeps none, and a cache that would be over its capacity', async () => {
    const wet = '9101,XALD,J27-041,filled sealed,200,,19.7,219.7,2027-06-14T07:00Z';
    expect(await doubtsOf('drums', `${drumHeadings}\n${wet}`)).toEqual([
      expect.stringContaining('line 2, grossKg: drum 9101 weighs 200 kg over its tare'),
    ]);
    const many = Array.from({ length: 60 }, (_, index) => drumLine(`92${index + 10}`, 'XLOR'));
    expect(await doubtsOf('drums', [drumHeadings, ...many].join('\n'))).toEqual([
      expect.stringContaining('XLOR holds'),
    ]);
  });
});

describe('who may', () => {
  it('accounts may take a file out and bring none in; a pilot neither', async () => {
    const accounts = await server.as('accounts');
    expect((await accounts.get('/api/csv/drums')).status).toBe(200);
    expect((await send(accounts, 'drums', drumHeadings)).status).toBe(403);
    const pilot = await server.as('pilot');
    expect((await pilot.get('/api/csv/drums')).status).toBe(403);
    expect((await send(pilot, 'drums', drumHeadings)).status).toBe(403);
  });
});
