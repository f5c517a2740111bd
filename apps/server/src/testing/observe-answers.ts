import { type INestApplicationContext, RequestMethod, type Type } from '@nestjs/common';
import { METHOD_METADATA, PATH_METADATA } from '@nestjs/common/constants.js';
import { ModulesContainer } from '@nestjs/core';
import { z } from 'zod';
import type { Answers } from '../http/answers.js';
import { answersOf } from '../http/openapi-routes.js';

/** An answer as a client has it. */
export interface Observed {
  readonly method: string;
  readonly path: string;
  readonly status: number;
  readonly contentType: string;
  readonly body: unknown;
}

interface Route {
  readonly method: string;
  readonly pattern: RegExp;
  readonly parameters: number;
  readonly answers: Answers;
}

/** Holds every answer of the server against what its route says that it answers. Throws where they part. */
export const observeAnswers = (app: INestApplicationContext): ((observed: Observed) => void) => {
  const routes = routesOf(app);
  return ({ method, path, status, contentType, body }) => {
    const [bare = ''] = path.split('?');
    const route = routes.find((each) => each.method === method && each.pattern.test(bare));
    if (route === undefined || status >= 300) return;
    const shape = route.answers[status];
    const where = `${method} ${path} answers ${status}`;
    if (shape === undefined) throw new Error(`${where}, which its route does not say.`);
    if (shape === 'nothing' && body === '') return;
    if (shape === 'nothing') throw new Error(`${where} with a body, and its route says there is none.`);
    if (typeof shape === 'string') {
      if (!contentType.startsWith(shape)) throw new Error(`${where} with ${contentType}, not ${shape}.`);
      return;
    }
    const read = shape.safeParse(body);
    if (!read.success) throw new Error(`${where} otherwise than it says:\n${z.prettifyError(read.error)}`);
  };
};

/** Those with the fewest parameters first: `/api/flights/away` is no flight. */
const routesOf = (app: INestApplicationContext): readonly Route[] =>
  [...app.get(ModulesContainer).values()]
    .flatMap(({ controllers }) => [...controllers.values()])
    .flatMap(({ metatype }) => (typeof metatype === 'function' ? routesIn(metatype as Type) : []))
    .sort((one, other) => one.parameters - other.parameters);

const routesIn = (controller: Type): readonly Route[] => {
  const base: unknown = Reflect.getMetadata(PATH_METADATA, controller);
  const prototype = controller.prototype as object;
  return Object.getOwnPropertyNames(prototype).flatMap((name) => {
    const handler = Reflect.get(prototype, name) as object;
    const method = Reflect.getMetadata(METHOD_METADATA, handler) as RequestMethod | undefined;
    const answers = answersOf(handler);
    if (method === undefined || answers === undefined) return [];
    const own: unknown = Reflect.getMetadata(PATH_METADATA, handler);
    const path = `/${String(base)}/${String(own)}`.replace(/\/+/g, '/').replace(/\/$/, '');
    const parts = path.split('/');
    return [
      {
        method: RequestMethod[method],
        pattern: new RegExp(`^${parts.map(partPattern).join('/')}$`),
        parameters: parts.filter((part) => part.startsWith(':')).length,
        answers,
      },
    ];
  });
};

const partPattern = (part: string): string => (part.startsWith(':') ? '[^/]+' : part.replace('.', '\\.'));
