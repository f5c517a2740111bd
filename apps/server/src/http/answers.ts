import { HttpStatus, SetMetadata } from '@nestjs/common';
import type { z } from 'zod';

export const answersKey = 'drumline: answers';

/** What a route sends where all is well: JSON of a shape, a file of a kind, or nothing. */
export type AnswerShape = z.ZodType | 'application/pdf' | 'text/csv' | 'nothing';

/** By status. */
export type Answers = Readonly<Record<number, AnswerShape>>;

/** As a handler returns it: JSON writes a Date as text. */
type Unsent<T> = unknown extends T
  ? unknown
  : T extends string
    ? T | Date
    : T extends number | boolean | null | undefined
      ? T
      : { readonly [K in keyof T]: Unsent<T[K]> };

type OnHandlerOf<T> = <Handler extends (...given: never[]) => T | Promise<T>>(
  target: object,
  name: string | symbol,
  method: TypedPropertyDescriptor<Handler>,
) => void;

/**
 * Says what a route answers: the OpenAPI document shows it, every answer in the tests is held against it, and a handler
 * that returns something else does not compile. A route without one of these fails `openapi.db.spec`.
 */
export const Answered = <Schema extends z.ZodType>(
  schema: Schema,
  status: number = HttpStatus.OK,
): OnHandlerOf<Unsent<z.output<Schema>>> => says({ [status]: schema });

/** As `Answered`, where the handler writes the JSON itself, or has more than one answer. */
export const AnsweredBy = (answers: Answers): MethodDecorator => says(answers);

const says = (answers: Answers): MethodDecorator => SetMetadata(answersKey, answers);
