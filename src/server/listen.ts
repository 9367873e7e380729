/** The port that the server listens on: the one asked for or none; where none was asked for, the first that is free. */
import type { Server } from 'node:net';

const FIRST_PORT = 4173;
const PORTS_TRIED = 50;
/** How long the holder of a taken port may take to say what it is, ms. */
const PATIENCE = 1000;

/**
 * Listens.
 * @param host address to listen on; undefined for every address of the machine, IPv6 too where it has that
 * @param port the one asked for; undefined for the first that is free from 4173 on
 * @returns the port
 * @throws Error when the port asked for is taken or not allowed; it says who may hold it and the way out
 */
export async function listen(server: Server, host: string | undefined, port?: number): Promise<number> {
  if (port !== undefined) {
    try {
      return await listenAt(server, host, port);
    } catch (error) {
      throw new Error(await wayOut(error as NodeJS.ErrnoException, port), { cause: error });
    }
  }
  for (let at = FIRST_PORT; ; at++) {
    try {
      return await listenAt(server, host, at);
    } catch (error) {
      const taken = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
      if (!taken || at - FIRST_PORT >= PORTS_TRIED) throw error;
    }
  }
}

async function listenAt(server: Server, host: string | undefined, port: number): Promise<number> {
  await new Promise<void>((done, failed) => {
    server.once('error', failed);
    server.listen({ port, host }, () => {
      server.off('error', failed);
      done();
    });
  });
  return (server.address() as { port: number }).port;
}

async function wayOut(error: NodeJS.ErrnoException, port: number): Promise<string> {
  if (error.code === 'EACCES')
    return `this account may not listen on port ${port}; choose one above 1023, such as --port ${FIRST_PORT}`;
  if (error.code !== 'EADDRINUSE') return error.message;
  const holder = (await isPouchful(port))
    ? `another Pouchful, at http://localhost:${port}`
    : 'another program, perhaps a Pouchful that still runs';
  return `port ${port} is taken by ${holder}; stop that, name another with --port, or leave --port out to get a free one`;
}

/** Whether what listens there answers as Pouchful does. */
async function isPouchful(port: number): Promise<boolean> {
  try {
    const answer = await fetch(`http://127.0.0.1:${port}/api/pair`, {
      signal: AbortSignal.timeout(PATIENCE),
    });
    return answer.ok && 'tokenNeeded' in ((await answer.json()) as object);
  } catch {
    return false;
  }
}
