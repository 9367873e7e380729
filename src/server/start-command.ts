/** The options of the server, for `npm start -- ...` and `npx pouchful start ...` alike. */
import { Command, Option } from 'commander';

export interface StartOptions {
  /** Other devices of the network may come in, once they are paired. */
  readonly lan?: boolean;
  /** Further names by which this server is called. */
  readonly name?: readonly string[];
  /** The port to listen on; 0 lets the machine choose. Without one, the first that is free from 4173 on. */
  readonly port?: number;
  /** The household file. */
  readonly data?: string;
  /** A PostgreSQL with several households, in the place of a file. */
  readonly database?: string;
  /** Every request comes through a proxy that serves by HTTPS and says by `X-Forwarded-*` how it was asked. */
  readonly behindProxy?: boolean;
  /** Certificate and key, PEM files: both or neither. */
  readonly cert?: string;
  readonly key?: string;
}

const AFTER = `
Without --lan only this machine is served, and no pairing is asked for. With --lan a code and a QR
code are shown; each device is paired once with them, and may be put out again under Household > Devices.

Environment: PORT, POUCHFUL_DATA and POUCHFUL_DATABASE stand for --port, --data and --database.`;

/**
 * The command that starts the screens.
 * @param run takes what was asked for
 */
export function startCommand(run: (options: StartOptions) => Promise<void>): Command {
  return new Command('start')
    .description('start the screens in the browser, on this machine alone unless --lan is given')
    .option('--lan', 'open to the home network, to devices that are paired')
    .option('--port <n>', 'port to listen on (default: the first that is free from 4173 on, or PORT)')
    .option('--data <file>', 'household file (default: POUCHFUL_DATA, or as README says)')
    .option(
      '--database <url>',
      'PostgreSQL with several households, see docs/hosting.md (or POUCHFUL_DATABASE)',
    )
    .option('--name <host>', 'a further name by which this server is called; may be given again', collected)
    .option('--behind-proxy', 'a proxy on this machine serves by HTTPS and sets X-Forwarded-*; with --name')
    .option('--cert <file>', 'certificate (PEM), to serve by HTTPS; with --key')
    .option('--key <file>', 'private key of the certificate (PEM)')
    .addOption(new Option('--host [address]').hideHelp())
    .allowExcessArguments(false)
    .addHelpText('after', AFTER)
    .action(async ({ host, port, ...rest }: Asked) => {
      if (host !== undefined)
        throw new Error('--host is no more; --lan opens to the home network, to devices that are paired');
      for (const one of rest.name ?? [])
        if (!/^([a-z\d]([a-z\d.-]*[a-z\d])?|\[[a-f\d:.]+\])$/i.test(one))
          throw new Error(
            `--name is "${one}"; give a name alone, without scheme and port, such as shelter.lan`,
          );
      if (rest.behindProxy && !rest.name)
        throw new Error('--behind-proxy needs --name, the name by which the proxy is called');
      if (rest.behindProxy && rest.lan)
        throw new Error(
          '--behind-proxy and --lan exclude each other: who comes past the proxy could say anything',
        );
      const database = rest.database ?? (process.env.POUCHFUL_DATABASE || undefined);
      if (database && rest.data)
        throw new Error('--data names a file and --database a PostgreSQL; name one of them');
      await run({ ...rest, database, port: portFrom(port, '--port') ?? portFrom(process.env.PORT, 'PORT') });
    });
}

type Asked = Omit<StartOptions, 'port'> & { readonly host?: string | true; readonly port?: string };

/** A port number from a text. @throws Error naming the option and the value */
function portFrom(text: string | undefined, name: string): number | undefined {
  if (text === undefined || text === '') return undefined;
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65535) return port;
  throw new Error(`${name} is "${text}"; give a port number from 0 to 65535`);
}

function collected(value: string, before: readonly string[] = []): readonly string[] {
  return [...before, value];
}
