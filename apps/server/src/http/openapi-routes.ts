import type { INestApplicationContext, Type } from '@nestjs/common';
import { ROUTE_ARGS_METADATA } from '@nestjs/common/constants.js';
import { ModulesContainer } from '@nestjs/core';
import { type Access, accessKey } from '../people/access.js';
import { type Answers, answersKey } from './answers.js';
import { readExpected } from './etag.js';

/** What the code of a route says of it beside its schemas. */
export interface RouteTraits {
  readonly access: Access | undefined;
  readonly asksVersion: boolean;
  /** Undefined: it does not say, which is a fault. */
  readonly answers: Answers | undefined;
}

/** By operation id, as the OpenAPI document makes it: class and method. */
export const routeTraits = (app: INestApplicationContext): ReadonlyMap<string, RouteTraits> => {
  const classes = [...app.get(ModulesContainer).values()].flatMap(({ controllers }) =>
    [...controllers.values()].flatMap(({ metatype }) =>
      typeof metatype === 'function' ? [metatype as Type] : [],
    ),
  );
  return new Map(
    classes.flatMap((each) =>
      Object.getOwnPropertyNames(each.prototype).map((method) => [
        `${each.name}_${method}`,
        traitsOf(each, method),
      ]),
    ),
  );
};

/** What a handler says that it answers. */
export const answersOf = (handler: unknown): Answers | undefined =>
  Reflect.getMetadata(answersKey, handler as object) as Answers | undefined;

const traitsOf = (controller: Type, method: string): RouteTraits => {
  const handler: unknown = Reflect.get(controller.prototype as object, method);
  const ofMethod: unknown = Reflect.getMetadata(accessKey, handler as object);
  const ofClass: unknown = Reflect.getMetadata(accessKey, controller);
  const args = (Reflect.getMetadata(ROUTE_ARGS_METADATA, controller, method) ?? {}) as Readonly<
    Record<string, { readonly factory?: unknown }>
  >;
  return {
    access: (ofMethod ?? ofClass) as Access | undefined,
    answers: answersOf(handler),
    asksVersion: Object.values(args).some(({ factory }) => factory === readExpected),
  };
};
