import type { Server } from 'node:http';
import type { NestExpressApplication } from '@nestjs/platform-express';

const answerMs = 10_000;

/** Takes no new request, answers those under way for up to ten seconds, then closes the rest of the application. */
export const closeApp = async (app: NestExpressApplication): Promise<void> => {
  const server: Server = app.getHttpServer();
  const closed = new Promise((resolve) => server.close(resolve));
  const idle = setInterval(() => server.closeIdleConnections(), 50); // kept alive by a browser, with nothing asked
  const late = new Promise((resolve) => setTimeout(resolve, answerMs).unref());
  await Promise.race([closed, late]);
  clearInterval(idle);
  await app.close();
};
