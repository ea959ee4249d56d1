import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import closeWithGrace from 'close-with-grace';
import { pino } from 'pino';
import { loadCatalogue } from './catalogue/index.js';
import { readConfig } from './config.js';
import { ERRORS } from './errors.js';
import { makeReasoner } from './reasoning/index.js';
import { buildApp, type Clock } from './web/app.js';
import { readMessages } from './web/plugins/viewFiles.js';
import { makeMessages, makeWords } from './words/index.js';

/** Time that requests under way are given when the process is told to stop. */
const GRACE_MS = 5000;

const beside = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Today where the server stands. */
const wallClock: Clock = {
  today: () => {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  },
};

function readVersion(): string {
  const { version } = JSON.parse(readFileSync(beside('../package.json'), 'utf8')) as {
    version: string;
  };
  return version;
}

async function start(): Promise<void> {
  const config = readConfig();
  const log = pino({ level: config.logLevel }, pino.destination(2));
  const catalogue = loadCatalogue(beside('../rules'));
  const viewsFolder = beside('../views');
  const app = await buildApp({
    catalogue,
    reasoner: makeReasoner(catalogue),
    words: makeWords(catalogue, makeMessages(readMessages(viewsFolder))),
    clock: wallClock,
    version: readVersion(),
    viewsFolder,
    ...(config.publicOrigin !== undefined && { publicOrigin: config.publicOrigin }),
    log,
  });
  closeWithGrace({ delay: GRACE_MS, logger: log }, async ({ err }) => {
    if (err) log.error({ err }, 'stopping after an error');
    await app.close();
  });
  await app.listen({ host: config.host, port: config.port });
  process.stdout.write(`Slab & Rag is at ${app.listeningOrigin}\n`);
}

/** What a person can put right, in words that say how; undefined for a fault of our own. */
function plainWords(code: string, error: Error): string | undefined {
  if (code === 'EADDRINUSE') {
    const port = 'port' in error ? String(error.port) : '';
    return `Port ${port} is taken: set PORT to another number.`;
  }
  return code in ERRORS || code === 'EACCES' ? error.message : undefined;
}

/** What an installation got wrong is said plainly; only our own faults show where they happened. */
function sayWhy(error: unknown): void {
  const isError = error instanceof Error;
  const code = isError && 'code' in error ? String(error.code) : '';
  const words = isError ? (plainWords(code, error) ?? error.stack) : String(error);
  process.stderr.write(`Slab & Rag could not start.\n${words ?? ''}\n`);
}

try {
  await start();
} catch (error) {
  sayWhy(error);
  process.exitCode = 1;
  process.exit();
}
