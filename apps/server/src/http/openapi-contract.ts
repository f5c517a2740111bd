import type { OpenAPIObject } from '@nestjs/swagger';
import { AnswerSchemas } from './openapi-answers.js';
import type { RouteTraits } from './openapi-routes.js';
import { problemTitles } from './problem.js';

type Operation = NonNullable<OpenAPIObject['paths'][string]['get']>;
type Parameter = NonNullable<Operation['parameters']>[number];

const sessionCookie = 'cookie';
const reading = new Set(['get', 'head', 'options']);

/** What holds for every route alike is said in each: who is let in, the headers asked for, and how it may refuse. */
export const withContract = (
  document: OpenAPIObject,
  traits: ReadonlyMap<string, RouteTraits>,
): OpenAPIObject => {
  const schemas = new AnswerSchemas();
  const paths = Object.entries(document.paths).map(([path, methods]) => [
    path,
    Object.fromEntries(
      Object.entries(methods as Readonly<Record<string, Operation>>).map(([method, operation]) => {
        const route = { path, method, operation, traits: traits.get(operation.operationId ?? '') };
        return [method, described(route, schemas.responses(route.traits?.answers))];
      }),
    ),
  ]);
  return withUnits({
    ...document,
    paths: Object.fromEntries(paths) as OpenAPIObject['paths'],
    components: {
      ...document.components,
      responses: problems,
      schemas: { ...document.components?.schemas, ...schemas.named, Problem },
    },
  }) as OpenAPIObject;
};

interface Route {
  readonly path: string;
  readonly method: string;
  readonly operation: Operation;
  readonly traits: RouteTraits | undefined;
}

const described = (route: Route, answers: Operation['responses']): Operation => {
  const { method, operation, traits } = route;
  const isPublic = traits?.access === 'public';
  const parameters: readonly Parameter[] = [
    ...(operation.parameters ?? []),
    ...(traits?.asksVersion === true ? versionHeaders : []),
    ...(isPublic || reading.has(method) ? [] : [csrfHeader]),
  ];
  const refusals = statusesOf(route).map((status) => [
    status,
    { $ref: `#/components/responses/Problem${status}` },
  ]);
  return {
    ...operation,
    security: isPublic ? [] : [{ [sessionCookie]: [] }],
    parameters: [...parameters],
    responses: { ...answers, ...Object.fromEntries(refusals) },
  };
};

const statusesOf = ({ path, method, operation, traits }: Route): readonly number[] => {
  const isPublic = traits?.access === 'public';
  const isReading = reading.has(method);
  const isGiven = (operation.parameters ?? []).length > 0 || operation.requestBody !== undefined;
  return [
    ...(isGiven ? [400] : []),
    ...(isPublic && operation.requestBody === undefined ? [] : [401]),
    ...(isPublic && isReading ? [] : [403]),
    ...(path.includes('{') ? [404] : []),
    ...(isReading || isPublic ? [] : [409]),
    ...(traits?.asksVersion === true ? [412, 428] : []),
    ...(operation.requestBody === undefined ? [] : [413, 415]),
    ...(isReading ? [] : [422]),
    ...(isPublic && !isReading ? [429] : []),
    503,
  ];
};

const header = (name: string, required: boolean, description: string): Parameter => ({
  name,
  in: 'header',
  required,
  description,
  schema: { type: 'string' },
});

const versionHeaders: readonly Parameter[] = [
  header('If-Match', false, 'The ETag that was read, like "3": changes that version. This or If-None-Match.'),
  header('If-None-Match', false, '*: makes a thing that is not there yet.'),
];

const csrfHeader = header('X-CSRF-Token', true, 'csrfToken of POST /api/sign-in or GET /api/me.');

const text = { type: 'string' } as const;

/** As RFC 9457 has it. */
const Problem = {
  type: 'object',
  description: 'A problem document (RFC 9457)',
  required: ['type', 'title', 'status', 'detail', 'instance'],
  properties: {
    type: { ...text, description: 'urn:drumline:problem:<kind>; programs tell problems apart by it' },
    title: text,
    status: { type: 'integer' },
    detail: { ...text, description: 'What happened, and what to do' },
    instance: { ...text, description: 'urn:drumline:request:<number>; the log has it under that number' },
    faults: {
      type: 'array',
      description: 'Fields that have to be put right',
      items: {
        type: 'object',
        required: ['path', 'problem', 'remedy'],
        properties: { path: text, problem: text, remedy: text },
      },
    },
  },
};

const problems = Object.fromEntries(
  [...problemTitles].map(([status, titles]) => [
    `Problem${status}`,
    {
      description: titles.join('; or: '),
      content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
    },
  ]),
);

/** OpenAPI 3.0 knows no `unit`: what is not of its own words begins with x-. */
const withUnits = (part: unknown): unknown => {
  if (Array.isArray(part)) return part.map(withUnits);
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(
    Object.entries(part).map(([key, value]) => [
      key === 'unit' && typeof value === 'string' ? 'x-unit' : key,
      key.startsWith('example') ? value : withUnits(value),
    ]),
  );
};
