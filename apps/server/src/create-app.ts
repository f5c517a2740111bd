import type { Server } from 'node:http';
import { NestFactory } from '@nestjs/core';
import type { NestExpressApplication } from '@nestjs/platform-express';
import helmet from 'helmet';
import { appOn } from './app.module.js';
import { refuseOtherTypes } from './http/content-type.js';
import { dropEmptyBody } from './http/empty-body.js';
import { serveOpenApi } from './http/openapi.js';
import { ParsePipe } from './http/parse.pipe.js';
import { ProblemFilter } from './http/problem.filter.js';
import { requestLog } from './http/request-log.js';
import { builtPages, pageSecurity, servePages } from './http/serve-pages.js';
import { nestLogger } from './log.js';
import type { Platform } from './platform.module.js';

/** The application on an open database and queue, not yet listening; `pages`: folder of the built pages. */
export const createApp = async (
  platform: Platform,
  pages: string = builtPages,
): Promise<NestExpressApplication> => {
  const { config, log } = platform;
  const app = await NestFactory.create<NestExpressApplication>(appOn(platform), {
    bodyParser: false,
    logger: nestLogger(log),
    forceCloseConnections: true,
    abortOnError: false,
    ...(config.https === undefined ? {} : { httpsOptions: config.https }),
  });
  const isSecure = config.https !== undefined || config.trustProxy;
  app.set('trust proxy', config.trustProxy ? 1 : false);
  app.set('etag', false); // an ETag here is a version, never a hash of the bytes
  app.use(requestLog(log));
  app.use(helmet(isSecure ? pageSecurity : { ...pageSecurity, ...plainHttp }));
  servePages(app, pages);
  app.useBodyParser('json', { limit: '5mb' });
  app.useBodyParser('text', { type: 'text/csv', limit: '5mb' });
  app.use(dropEmptyBody);
  app.use(refuseOtherTypes);
  app.useGlobalPipes(new ParsePipe());
  app.useGlobalFilters(new ProblemFilter(log));
  serveOpenApi(app);
  await app.init();
  // Longer than a browser or a proxy keeps an idle connection: else one is closed just as a request comes in on it.
  const server: Server = app.getHttpServer();
  server.keepAliveTimeout = 75_000;
  return app;
};

/** Without HTTPS a browser must not be told to insist on it: a phone on the base's own network could not come in. */
const plainHttp = { strictTransportSecurity: false } as const;
