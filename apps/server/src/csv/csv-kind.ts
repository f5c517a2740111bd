import { movementBodySchema, scenarioSchema } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import type { z } from 'zod';

export type Cell = string | number | null;
/** The cells of a line that are filled in, by the heading of their column. */
export type Cells = Readonly<Record<string, string | number>>;

interface Column {
  readonly heading: string;
  readonly holds: 'text' | 'number';
  /** Its heading may be left out, and its cells empty. */
  readonly optional?: boolean;
}

/** One kind of file: its columns, and how a line of it becomes a thing and back. */
export interface CsvKind {
  readonly columns: readonly Column[];
  readonly schema: z.ZodType;
  readonly thingOf: (cells: Cells) => unknown;
}

const text = (heading: string): Column => ({ heading, holds: 'text' });
const number = (heading: string): Column => ({ heading, holds: 'number' });
const optional = (column: Column): Column => ({ ...column, optional: true });

type StripLimit = Scenario['stripLimits'][number];
type HelicopterTask = Scenario['helicopterTasks'][number];
type Drum = Scenario['drums'][number];

export const stripLimits: CsvKind = {
  columns: [
    text('place'),
    text('type'),
    number('takeoffLb'),
    number('landingLb'),
    optional(text('whenSoft')),
    optional(number('softTakeoffLessLb')),
    optional(number('softLandingLessLb')),
    text('reference'),
  ],
  schema: scenarioSchema.shape.stripLimits.element,
  thingOf: ({ softTakeoffLessLb, softLandingLessLb, whenSoft, ...limit }) => ({
    ...limit,
    whenSoft: whenSoft ?? { takeoffLessLb: softTakeoffLessLb, landingLessLb: softLandingLessLb },
  }),
};

export const stripLimitCells = ({ whenSoft, ...limit }: StripLimit): Record<string, Cell> => ({
  ...limit,
  ...(whenSoft === 'closed'
    ? { whenSoft }
    : { softTakeoffLessLb: whenSoft.takeoffLessLb, softLandingLessLb: whenSoft.landingLessLb }),
});

/** A line with the id of a task that is there changes it; one without is a task of its own. */
export const helicopterTasks: CsvKind = {
  columns: [
    optional(text('id')),
    text('date'),
    text('helicopter'),
    text('programme'),
    text('place'),
    number('hours'),
    number('litres'),
    optional(text('note')),
  ],
  schema: scenarioSchema.shape.helicopterTasks.element,
  thingOf: ({ id: _, ...task }) => task,
};

export const helicopterTaskCells = (id: string, task: HelicopterTask): Record<string, Cell> => ({
  id,
  ...task,
});

const received = movementBodySchema.options.find((option) => option.shape.kind.value === 'received')!;
const { happenedAt, writtenAt } = received.shape;

const receivedDrumSchema = scenarioSchema.shape.drums.element
  .omit({ openedOn: true, held: true })
  .extend({ openedAt: writtenAt.exactOptional(), happenedAt });

export type ReceivedDrum = z.output<typeof receivedDrumSchema>;

/** Drums that are received: each line is an event of the ledger. */
export const drums: CsvKind = {
  columns: [
    text('number'),
    text('place'),
    text('batch'),
    text('content'),
    number('litres'),
    optional(text('openedAt')),
    number('tareKg'),
    number('grossKg'),
    text('happenedAt'),
  ],
  schema: receivedDrumSchema,
  thingOf: (cells) => cells,
};

export const drumCells = (
  { openedOn, held: _, ...drum }: Drum,
  happenedAt: string,
): Record<string, Cell> => ({
  ...drum,
  openedAt: openedOn === undefined ? null : `${openedOn}T00:00Z`,
  happenedAt,
});
