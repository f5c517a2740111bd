import type { NestExpressApplication } from '@nestjs/platform-express';
import { type Config, ConfigError } from './config.js';

/** Listens, and returns the address for people. */
export const listen = async (app: NestExpressApplication, config: Config): Promise<string> => {
  try {
    await app.listen(config.port, config.host);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EADDRINUSE') {
      throw new ConfigError(`PORT ${config.port} is taken by another program: stop that one, or set PORT.`);
    }
    if (code === 'EADDRNOTAVAIL') {
      throw new ConfigError(
        `HOST ${config.host} is not an address of this machine: correct it, or leave it out.`,
      );
    }
    throw error;
  }
  const address = app.getHttpServer().address() as { readonly port: number };
  return `${config.https === undefined ? 'http' : 'https'}://${config.host}:${address.port}`;
};
