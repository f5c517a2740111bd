import type { NestExpressApplication } from '@nestjs/platform-express';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { withContract } from './openapi-contract.js';
import { routeTraits } from './openapi-routes.js';

const describe = new DocumentBuilder()
  .setTitle('Drumline')
  .setDescription(
    'Errors are problem documents (RFC 9457) of type application/problem+json. ' +
      'Sign in at /api/sign-in; every other request that changes something carries X-CSRF-Token.',
  )
  .setVersion('1')
  .addCookieAuth('drumline_session', {
    type: 'apiKey',
    in: 'cookie',
    description: 'Given by POST /api/sign-in',
  })
  .build();

/** The document is made of the schemas that read the requests, once, when first asked for. */
export const serveOpenApi = (app: NestExpressApplication): void => {
  let document: OpenAPIObject | undefined;
  app.use('/api/openapi.json', (_: Request, response: Response) => {
    document ??= withContract(SwaggerModule.createDocument(app, describe), routeTraits(app));
    response.json(document);
  });
};
