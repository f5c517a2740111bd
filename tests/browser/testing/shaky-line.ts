import { createServer, type IncomingMessage, request, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** What becomes of a write: it goes through; the server fails; the line is dead; base has it and the answer is lost. */
type Mood = 'through' | 'answers 500' | 'down' | 'answer lost';

/** A line to an office that can be spoiled, as it is between a strip and a base. Reads go through but when it is down. */
export interface ShakyLine {
  readonly url: string;
  mood: Mood;
  /** Writes that came in, whatever became of them. */
  writes: number;
  readonly close: () => Promise<void>;
}

export const openShakyLine = async (officeUrl: () => string): Promise<ShakyLine> => {
  const server = createServer((asked, answer) => pass(line, officeUrl(), { asked, answer }));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const line: ShakyLine = {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    mood: 'through',
    writes: 0,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
  return line;
};

interface Exchange {
  readonly asked: IncomingMessage;
  readonly answer: ServerResponse;
}

const pass = (line: ShakyLine, officeUrl: string, { asked, answer }: Exchange): void => {
  const isWrite = asked.method === 'PUT';
  if (isWrite) line.writes += 1;
  if (line.mood === 'down') return void asked.socket.destroy();
  if (line.mood === 'answers 500' && isWrite) {
    asked.resume();
    answer.writeHead(500, { 'Content-Type': 'text/plain' }).end('out of order');
    return;
  }
  const isLost = line.mood === 'answer lost' && isWrite;
  const { port, hostname } = new URL(officeUrl);
  const on = request(
    { port, hostname, method: asked.method, path: asked.url, headers: asked.headers },
    (told) => {
      if (isLost) {
        told.resume();
        told.on('end', () => asked.socket.destroy());
        return;
      }
      answer.writeHead(told.statusCode ?? 502, told.headers);
      told.pipe(answer);
    },
  );
  on.on('error', () => asked.socket.destroy());
  asked.pipe(on);
};
