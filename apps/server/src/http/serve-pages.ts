import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pagePaths } from '@drumline/contract';
import type { NestExpressApplication } from '@nestjs/platform-express';
import compression from 'compression';
import type { NextFunction, Request, Response } from 'express';
import type { HelmetOptions } from 'helmet';
import { rootFolder } from '../config.js';

/** Where `npm start` leaves what the browser runs. */
export const builtPages = join(rootFolder, 'apps', 'web', 'dist');

const officeWorker = '/office-worker.js';

/** Nothing from elsewhere, nothing inline: no page of ours needs it. */
export const pageSecurity = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'"],
      scriptSrcAttr: ["'none'"],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", 'data:'],
      fontSrc: ["'self'", 'data:'],
      connectSrc: ["'self'"],
      workerSrc: ["'self'"],
      manifestSrc: ["'self'"],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
  },
  xFrameOptions: { action: 'deny' },
} as const satisfies HelmetOptions;

/**
 * Gives the pages' program to every address that is a page. Another address that a person opens in a browser gets it too,
 * as not found: it says so and leads on. A wrong address of the API stays an error of the API. A server without built pages
 * answers the API all the same.
 */
export const servePages = (app: NestExpressApplication, folder: string): void => {
  const index = join(folder, 'index.html');
  // Files only: an answer that holds somebody's token is not compressed beside text of another's choosing.
  app.use(['/assets', '/phone/assets'], compression());
  // A file's name holds the hash of its content.
  app.useStaticAssets(join(folder, 'assets'), {
    prefix: '/assets',
    immutable: true,
    maxAge: '1y',
    index: false,
  });
  // Keeps its name from build to build: what has to be asked for anew each time.
  app.use(officeWorker, (_: Request, response: Response, next: NextFunction) => {
    response.set('Cache-Control', 'no-cache');
    response.sendFile(join(folder, officeWorker), { cacheControl: false }, (fault) => fault && next());
  });
  servePhone(app, join(folder, 'phone'));
  app.use((request: Request, response: Response, next: NextFunction) => {
    const isKnown = isPage(request.path);
    if (!/^(GET|HEAD)$/.test(request.method) || !(isKnown || isLost(request))) return next();
    if (!isKnown) response.status(404);
    response.set('Cache-Control', 'no-cache');
    if (existsSync(index)) response.sendFile(index, { cacheControl: false });
    else response.status(503).type('text/plain').send('The pages are not built. Run: npm run build-pages\n');
  });
};

/** The crews' phones: a program of their own, so that its service worker has a say over nothing but /phone/. */
const servePhone = (app: NestExpressApplication, folder: string): void => {
  app.useStaticAssets(join(folder, 'assets'), {
    prefix: '/phone/assets',
    immutable: true,
    maxAge: '1y',
    index: false,
  });
  app.use('/phone', (request: Request, response: Response, next: NextFunction) => {
    // As people type it; below it stands what the worker has a say over.
    if (request.originalUrl !== '/phone') return next();
    response.redirect('/phone/');
  });
  // Worker, manifest and page keep their names from build to build.
  app.useStaticAssets(folder, {
    prefix: '/phone/',
    index: 'phone.html',
    setHeaders: (response) => response.setHeader('Cache-Control', 'no-cache'),
  });
};

/** Opened by a person, at an address of nothing. What a program asks for takes anything and is answered as a problem. */
const isLost = (request: Request): boolean =>
  !/^\/(api|health|assets|phone)(\/|$)/.test(request.path) && request.accepts('json', 'html') === 'html';

const isPage = (path: string): boolean =>
  path === '/' || pagePaths.some((page) => path === page || path.startsWith(`${page}/`));
