import type { OpenAPIObject } from '@nestjs/swagger';
import { z } from 'zod';
import type { AnswerShape, Answers } from './answers.js';

type Responses = NonNullable<OpenAPIObject['paths'][string]['get']>['responses'];
type Schemas = NonNullable<NonNullable<OpenAPIObject['components']>['schemas']>;

const descriptions: Readonly<Record<string, string>> = {
  200: 'Done, or as it stands',
  202: 'Taken up: proposed to a second person, or under way',
  204: 'Done; there is nothing to say',
};

/** The answers of all routes. Shapes that have a name stand once, among the components. */
export class AnswerSchemas {
  private readonly found: Record<string, unknown> = {};

  get named(): Schemas {
    return this.found as Schemas;
  }

  /** Those that a route says it has; a route that says nothing answers nothing that is known. */
  responses(answers: Answers | undefined): Responses {
    return Object.fromEntries(
      Object.entries(answers ?? {}).map(([status, shape]) => [
        status,
        { description: descriptions[status] ?? 'Answered', ...this.contentOf(shape) },
      ]),
    ) as Responses;
  }

  private contentOf(shape: AnswerShape): { readonly content?: object } {
    if (shape === 'nothing') return {};
    if (shape === 'text/csv') return { content: { [shape]: { schema: { type: 'string' } } } };
    if (shape === 'application/pdf')
      return { content: { [shape]: { schema: { type: 'string', format: 'binary' } } } };
    return { content: { 'application/json': { schema: this.jsonOf(shape) } } };
  }

  private jsonOf(schema: z.ZodType): object {
    const json: Json = z.toJSONSchema(schema, { target: 'openapi-3.0', io: 'output' });
    const { $schema: _, definitions = {}, ...own } = json;
    for (const [name, definition] of Object.entries(definitions))
      this.found[nameOf(name)] ??= renamed(definition);
    return renamed(own) as object;
  }
}

interface Json {
  readonly $schema?: unknown;
  readonly definitions?: Readonly<Record<string, unknown>>;
}

/** What is sent and what is answered may differ under one name: a field with a default is asked for, and always there. */
const nameOf = (name: string): string => `${name}.answered`;

/** With its references into the document that it becomes a part of. */
const renamed = (part: unknown): unknown => {
  if (Array.isArray(part)) return part.map(renamed);
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(
    Object.entries(part).map(([key, value]) => [
      key,
      key === '$ref' && typeof value === 'string' ? referenceTo(value) : renamed(value),
    ]),
  );
};

const referenceTo = (definition: string): string =>
  `#/components/schemas/${nameOf(definition.replace('#/definitions/', ''))}`;
