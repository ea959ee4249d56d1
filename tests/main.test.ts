import { spawn, type ChildProcess } from 'node:child_process';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const started: ChildProcess[] = [];
afterEach(() => {
  for (const child of started.splice(0)) child.kill('SIGKILL');
});

interface Run {
  readonly child: ChildProcess;
  readonly said: () => string;
  readonly complained: () => string;
  /** Exit code, or the signal that ended it. */
  readonly ended: Promise<number | string | null>;
}

function run(settings: Record<string, string>): Run {
  const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], {
    cwd: root,
    env: { PATH: process.env['PATH'], ...settings },
  });
  started.push(child);
  let out = '';
  let err = '';
  child.stdout.on('data', (text: Buffer) => (out += text.toString()));
  child.stderr.on('data', (text: Buffer) => (err += text.toString()));
  const ended = new Promise<number | string | null>((resolve) => {
    child.on('exit', (code, signal) => {
      resolve(code ?? signal);
    });
  });
  return { child, said: () => out, complained: () => err, ended };
}

const ADDRESS = /Slab & Rag is at (http:\/\/127\.0\.0\.1:\d+)/;

const later = (ms: number): Promise<undefined> =>
  new Promise((resolve) => setTimeout(resolve, ms, undefined));

async function addressOf({ said, complained, ended }: Run): Promise<string> {
  for (;;) {
    const [, address] = ADDRESS.exec(said()) ?? [];
    if (address !== undefined) return address;
    const code = await Promise.race([ended, later(20)]);
    if (code !== undefined) throw new Error(`it ended before it listened: ${complained()}`);
  }
}

describe('the process', { timeout: 30_000 }, () => {
  it('prints its address, serves, and stops when told to', async () => {
    const process = run({ PORT: '0' });
    const address = await addressOf(process);
    const sheet = await fetch(`${address}/sheet?mix=oil-relief&on=glass-slab`);
    expect(sheet.status).toBe(200);
    process.child.kill('SIGTERM');
    expect(await process.ended).toBe(0);
    expect(process.complained()).toBe('');
  });

  it('says plainly which setting it cannot use', async () => {
    const process = run({ PORT: 'ninety' });
    expect(await process.ended).toBe(1);
    expect(process.complained()).toMatch(/could not start\.\n.*PORT/);
    expect(process.complained()).not.toMatch(/ at .*\.ts/);
  });

  it('says plainly that its port is taken', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const { port } = other.address() as { port: number };
    const process = run({ PORT: String(port) });
    expect(await process.ended).toBe(1);
    expect(process.complained()).toMatch(
      new RegExp(`could not start\\.\nPort ${port} is taken: set PORT to another number\\.`),
    );
    expect(process.complained()).not.toMatch(/ at .*\.ts/);
    other.close();
  });
});
